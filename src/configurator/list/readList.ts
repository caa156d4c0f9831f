/** The entries of the list as one prescription asked of every frame. They are read as a worksheet reads them. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { Frame } from '../../catalogue/frame.ts';
import type { Shop } from '../../catalogue/shop.ts';
import type { ListRequest } from '../../quote/frameListRequest.ts';
import { type PairRequest, WEARERS } from '../../quote/request.ts';
import type { FieldFault } from '../fieldFault.ts';
import { type Entries, textOf } from '../fields.ts';
import { readEntries } from '../readEntries.ts';

/** What is still needed before a frame can be judged. */
export type Need = 'sphere' | 'add' | 'pd';

export interface ReadList {
  readonly use: ListRequest['use'];
  /** Whose frames come first. */
  readonly wearer: Frame['wearer'];
  /** null while something is needed. */
  readonly request: ListRequest | null;
  readonly needs: readonly Need[];
  readonly faults: readonly FieldFault[];
}

/** Reading needs a frame to belong to; no entry of the list does. */
const NO_FRAME: Frame = {
  ...{ id: '', model: '', collection: '', summary: '', story: '', priceMinor: 0, material: '' },
  ...{ wearer: 'adult', sun: false, mounting: { kind: 'full' } },
  ...{ rimDepthMm: 0, rimCoverMm: 0, faceFormDeg: 0, frameCurveD: 0, massG: 0 },
  ...{ comesFitted: '', inTheBox: [], colourways: [], sizes: [], notOffered: [] },
};

/** The list's request on a civil date, what it still needs and what is wrong with it. */
export function readList(entries: Entries, shop: Shop, words: Words, date: string): ReadList {
  const options = { designs: [], materials: [], tints: [], coatings: [], promotions: [] };
  const { request, faults } = readEntries(entries, {
    frame: NO_FRAME,
    data: { shop, words, ...options },
    date,
  });
  const { pairs, ...terms } = request;
  const [pair] = pairs;
  if (pair === undefined) throw new Error('Entries are read as one pair.');
  const { prescription } = pair;
  // Heights were measured in one frame, and would judge every other wrongly.
  const { fittingHeight: _, segmentHeight: __, ...fit } = pair.fit ?? {};
  const { use } = pair.lenses;
  const needs = needsOf(pair);
  const wearer = WEARERS.find((one) => one === textOf(entries, 'wearer')) ?? null;
  return {
    use,
    wearer: wearer === 'child' ? 'child' : 'adult',
    needs,
    faults,
    request: needs.length > 0 ? null : { ...terms, wearer, use, prescription, fit },
  };
}

function needsOf({ prescription, fit, lenses: { use } }: PairRequest): readonly Need[] {
  if (use === 'none') return [];
  const eyes = [prescription?.right ?? {}, prescription?.left ?? {}];
  const needs: Need[] = [];
  if (eyes.some(({ sphere, balance }) => sphere === undefined && balance !== true)) needs.push('sphere');
  if (use !== 'distance' && eyes.every(({ add }) => !add)) needs.push('add');
  if (fit?.pd === undefined && (use !== 'near' || fit?.nearPd === undefined)) needs.push('pd');
  return needs;
}
