/** The worksheet as the page is built with it: untouched, and complete but for its script. */
import { keepMount } from 'nanostores';
import type { ComponentChild } from 'preact';
import { jsxTemplate } from 'preact/jsx-runtime';
import { renderToString } from 'preact-render-to-string';
import type { Frame } from '../catalogue/frame.ts';
import { isOwn } from '../configurator/entry/ownFrame.ts';
import type { Opening } from '../configurator/opening.ts';
import type { ShopData } from '../configurator/shopData.ts';
import { createWorksheet, type Worksheet as Stores } from '../configurator/worksheet.ts';
import { OptionList } from './OptionList.tsx';
import type { ListProps } from './OptionPlace.tsx';
import { Sheet } from './sheet.ts';
import { OtherParts, Worksheet } from './Worksheet.tsx';

interface Source {
  readonly frame: Frame;
  readonly data: ShopData;
  readonly opening: Opening;
  readonly front?: ComponentChild;
}

/** HTML of the worksheet. The shop's frames have few different forms below the choice of size and colourway. */
export function worksheetHtml({ frame, data, opening, front }: Source): string {
  const stores = createWorksheet({ frame, data, opening, date: opening.date });
  const { standing, shownFaults, chosen, reported } = stores;
  // Else each reading mounts its store anew, and a timer holds all of them for another second.
  for (const store of [standing, shownFaults, ...Object.values(chosen), ...Object.values(reported)])
    keepMount(store);
  const others = jsxTemplate([otherPartsHtml(stores, opening)]);
  return renderToString(<Worksheet stores={stores} front={front} others={others} />);
}

/** A list in the element that its place is in the browser. */
const BuiltList = ({ kind }: ListProps) => (
  <div class="ws-place">
    <OptionList kind={kind} />
  </div>
);

const kept = new WeakMap<ShopData, Map<string, string>>();

function otherPartsHtml(stores: Stores, { reports, answer }: Opening): string {
  const { data, frame } = stores;
  const { size, colourway, ...chosen } = stores.read.get().choices;
  // All that these parts read apart from the shop.
  const key = JSON.stringify([chosen, frame.faceFormDeg, isOwn(frame), answer.price.codes, reports]);
  const known = kept.get(data) ?? new Map<string, string>();
  kept.set(data, known);
  const html =
    known.get(key) ??
    renderToString(
      <Sheet.Provider value={stores}>
        <OtherParts List={BuiltList} />
      </Sheet.Provider>,
    );
  known.set(key, html);
  return html;
}
