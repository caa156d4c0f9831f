/**
 * Brings the worksheet of a page to life: stores from what the page holds, what was kept and what was typed
 * meanwhile, and the engine once somebody begins.
 */
import './linksUnderBase.ts';
import { type ComponentChild, h, hydrate } from 'preact';
import { civilDateAt } from '../catalogue/civilDate.ts';
import type { Frame } from '../catalogue/frame.ts';
import { consult, type Engine } from '../configurator/consult.ts';
import type { Asked } from '../configurator/engineWorker.ts';
import { keep, recall } from '../configurator/keeping.ts';
import type { Opening } from '../configurator/opening.ts';
import type { ShopData } from '../configurator/shopData.ts';
import { createWorksheet, type Worksheet as Stores } from '../configurator/worksheet.ts';
import { deviceShelf } from './deviceShelf.ts';
import { watchAddress } from './keeping/arrival.ts';
import { tickedEarly } from './tickedEarly.ts';
import { typedIn } from './typedIn.ts';
import { Worksheet } from './Worksheet.tsx';

/** What a frame's page holds beside the form. */
export interface PageData {
  readonly frame: Frame;
  readonly opening: Opening;
}

/** How a worksheet of an own frame differs from one of the shop's. */
interface OwnParts {
  /** Stands in the place of the choice of size and colourway. */
  readonly front: ComponentChild;
  readonly around: (engine: Engine, stores: Stores) => Engine;
}

/** Hydrates the form in `root`. */
export function startWorksheet(
  root: HTMLElement,
  { frame, opening }: PageData,
  data: ShopData,
  own?: OwnParts,
): void {
  const date = civilDateAt(Date.now(), data.shop.timeZone);
  const kept = recall(deviceShelf(), frame.id);
  const typed = typedIn(root);
  const tickAgain = tickedEarly(root);
  const stores = createWorksheet({ frame, data, opening, date });
  // The static form holds no entries, so its first rendering here has none either.
  hydrate(h(Worksheet, { stores, front: own?.front }), root);
  stores.fill({ ...kept, ...typed });
  stores.kept.set(kept !== null);
  stores.entries.listen((now) => {
    if (stores.kept.get()) keep(deviceShelf(), frame.id, now);
  });
  tickAgain();
  const begun = kept !== null || Object.keys(typed).length > 0 || date !== opening.date;
  const begin = once(() => {
    const engine = engineFor(stores, root.dataset['frames'] ?? '');
    consult(stores, own === undefined ? engine : own.around(engine, stores));
  });
  if (begun) begin();
  stores.drawing.listen(begin);
  for (const sign of ['focusin', 'pointerdown'] as const) root.addEventListener(sign, begin, { once: true });
  watchAddress(stores, begin);
}

/** The engine in its thread, given the shop with this one frame; the others lie at `frames` until advice needs them. */
function engineFor(stores: Stores, frames: string): Engine {
  const worker = new Worker(new URL('../configurator/engineWorker.ts', import.meta.url), { type: 'module' });
  const send = (asked: Asked) => worker.postMessage(asked);
  worker.addEventListener('error', () => stores.engineFailed.set(true));
  send({ offer: { ...stores.data, frames: [stores.frame] }, frames });
  return {
    ask: (serial, request) => send({ serial, request }),
    draw: (compared) => send({ compared }),
    listen: (heard) => worker.addEventListener('message', ({ data }) => heard(data)),
  };
}

function once(action: () => void): () => void {
  let done = false;
  return () => {
    if (done) return;
    done = true;
    action();
  };
}
