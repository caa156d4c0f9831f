/** What whole pairs come to: those that the owner watches, or the cheapest of the shop for each use. */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Use } from '../../catalogue/design.ts';
import type { TypicalPair } from '../../catalogue/priceHabits.ts';
import { frameJudge } from '../../quote/frameList.ts';
import type { ListRequest } from '../../quote/frameListRequest.ts';
import { quote } from '../../quote/quote.ts';
import type { PairRequest, PrescriptionRequest } from '../../quote/request.ts';
import type { PriceRow } from './listedPrices.ts';

const PD_MM = { right: 32, left: 32 };

function bothEyes({
  sphere,
  cylinder,
  add,
}: Pick<TypicalPair, 'sphere' | 'cylinder' | 'add'>): PrescriptionRequest {
  const eye = { sphere, ...(cylinder === 0 ? {} : { cylinder, axis: 180 }), ...(add === 0 ? {} : { add }) };
  return { right: eye, left: eye };
}

/** The pair as it would be asked for. Height and segment are put where most frames allow them. */
function requestOf(pair: TypicalPair, heightMm: number): PairRequest {
  const { frame, size, colourway, use, design, material, tint, coating } = pair;
  const height = { right: heightMm, left: heightMm };
  return {
    ...{ frame, size, colourway },
    prescription: use === 'none' ? null : bothEyes(pair),
    fit: { pd: PD_MM, fittingHeight: height, segmentHeight: height },
    lenses: { use, design, material, tint, coating },
  };
}

/** A watched pair's total on a day; null where the shop, as it then was, has no such pair. */
function watched(catalogue: Catalogue, pair: TypicalPair, date: string): PriceRow | null {
  const frame = catalogue.frames.find(({ id }) => id === pair.frame);
  const bMm = frame?.sizes.find(({ id }) => id === pair.size)?.bMm ?? 0;
  const reply = quote(catalogue, { date, pairs: [requestOf(pair, Math.round(bMm / 2 + 3))] });
  if (!reply.ok) return null;
  const unable = reply.answer.verdict === 'refused' ? ' (cannot be made)' : '';
  return {
    kind: 'package',
    source: `frames/${pair.frame}`,
    part: pair.name,
    what: `${pair.name}${unable}`,
    minor: reply.answer.price.total,
  };
}

/** Powers that readers of each use commonly have: they price the cheapest pair, nothing more. */
const READERS: readonly { readonly use: Use; readonly told: string; readonly eyes: PrescriptionRequest }[] = [
  { use: 'distance', told: 'distance, -2.00 -0.50', eyes: bothEyes({ sphere: -2, cylinder: -0.5, add: 0 }) },
  { use: 'near', told: 'reading, add 2.00', eyes: bothEyes({ sphere: 0, cylinder: 0, add: 2 }) },
  {
    use: 'intermediate',
    told: 'screen and desk, add 2.00',
    eyes: bothEyes({ sphere: 0, cylinder: 0, add: 2 }),
  },
  { use: 'all', told: 'all in one, add 2.00', eyes: bothEyes({ sphere: 0, cylinder: 0, add: 2 }) },
];

/** The cheapest pair that can be made for a use; null where the shop has none. */
function cheapest(
  catalogue: Catalogue,
  date: string,
  { use, told, eyes }: (typeof READERS)[number],
): PriceRow | null {
  const asked: ListRequest = { date, wearer: null, use, prescription: eyes, fit: { pd: PD_MM } };
  const judge = frameJudge(catalogue, asked);
  let best: { readonly frame: string; readonly minor: number } | null = null;
  for (const frame of catalogue.frames) {
    const answer = judge(frame);
    if (answer === null || answer.verdict === 'refused' || answer.totalMinor === null) continue;
    if (best === null || answer.totalMinor < best.minor) best = { frame: frame.id, minor: answer.totalMinor };
  }
  return (
    best && {
      kind: 'package',
      source: `frames/${best.frame}`,
      part: use,
      what: `Cheapest pair for ${told}, all included`,
      minor: best.minor,
    }
  );
}

/** Totals of typical pairs on a day, tax and shipping to the shop's own destination included. */
export function typicalPrices(catalogue: Catalogue, watch: readonly TypicalPair[], date: string): PriceRow[] {
  const rows =
    watch.length > 0
      ? watch.map((pair) => watched(catalogue, pair, date))
      : READERS.map((reader) => cheapest(catalogue, date, reader));
  return rows.filter((row) => row !== null);
}
