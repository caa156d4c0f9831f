/** Keeps the list answered: each change of what is asked goes to the engine, and the newest answer comes back. */
import { computed } from 'nanostores';
import type { ListTold } from './answerList.ts';
import type { FrameListStores } from './frameList.ts';
import type { ListAsked } from './listWorker.ts';

/** The engine, in whatever thread it runs. */
export interface ListEngine {
  readonly ask: (asked: Extract<ListAsked, { readonly serial: number }>) => void;
  readonly listen: (heard: (told: ListTold) => void) => void;
}

/** Asks the engine now and at every change; without a whole request all answers go. Returns what ends it. */
export function consultList(stores: FrameListStores, engine: ListEngine): () => void {
  let serial = 0;
  let asked = '';
  engine.listen((told) => {
    if (told.serial === serial) stores.hear(told);
  });
  const wanted = computed(
    [stores.read, stores.filters],
    ({ request }, { widthFromMm, widthToMm, colour }) => ({
      request,
      limits: { widthFromMm, widthToMm, colour },
    }),
  );
  return wanted.subscribe(({ request, limits }) => {
    const text = request === null ? '' : JSON.stringify({ request, limits });
    if (text === asked) return;
    asked = text;
    serial += 1;
    if (request === null) {
      stores.answers.set(new Map());
      stores.progress.set('idle');
      return;
    }
    stores.progress.set('judging');
    engine.ask({ serial, request, limits });
  });
}
