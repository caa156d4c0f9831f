/** The worksheet as the page is built with it: untouched, and complete but for its script. */
import { keepMount } from 'nanostores';
import type { ComponentChild } from 'preact';
import { jsxTemplate } from 'preact/jsx-runtime';
import { renderToString } from 'preact-render-to-string';
import type { Frame } from '../catalogue/frame.ts';
import { isOwn } from '../configurator/entry/ownFrame.ts';
import type { Opening, Reports } from '../configurator/opening.ts';
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
  const { standing, shownFaults, chosen } = stores;
  keep([standing, shownFaults, ...Object.values(chosen)]);
  const others = jsxTemplate([otherPartsHtml(stores, opening)]);
  return renderToString(<Worksheet stores={stores} front={front} others={others} />);
}

/** A list in the element that its place is in the browser. */
const BuiltList = ({ kind }: ListProps) => (
  <div class="ws-place">
    <OptionList kind={kind} />
  </div>
);

/** Else each reading mounts its store anew, and a timer holds all of them for another second. */
function keep(stores: readonly Parameters<typeof keepMount>[0][]): void {
  for (const store of stores) keepMount(store);
}

const kept = new WeakMap<ShopData, WeakMap<Reports, Map<string, string>>>();

/** What is kept for the shop and these very reports. */
function keptFor(data: ShopData, reports: Reports): Map<string, string> {
  const ofShop = kept.get(data) ?? new WeakMap<Reports, Map<string, string>>();
  kept.set(data, ofShop);
  const found = ofShop.get(reports) ?? new Map<string, string>();
  ofShop.set(reports, found);
  return found;
}

function otherPartsHtml(stores: Stores, { reports, answer }: Opening): string {
  const { data, frame } = stores;
  const { size, colourway, ...choices } = stores.read.get().choices;
  const known = keptFor(data, reports);
  // All that these parts read apart from the shop and the reports.
  const key = JSON.stringify([choices, frame.faceFormDeg, isOwn(frame), answer.price.codes]);
  const html = known.get(key) ?? renderOtherParts(stores);
  known.set(key, html);
  return html;
}

function renderOtherParts(stores: Stores): string {
  keep(Object.values(stores.reported));
  const html = renderToString(
    <Sheet.Provider value={stores}>
      <OtherParts List={BuiltList} />
    </Sheet.Provider>,
  );
  // Written and read again, it is one flat text; as rendered, each page would gather thousands of bits of it anew.
  return Buffer.from(html).toString();
}
