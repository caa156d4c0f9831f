/**
 * The best package of each frame for one prescription, for lists of many frames: the cheapest that is not refused,
 * over the frame's sizes and the packages of frameListPackages.ts; among equally cheap ones a pair without a caution,
 * then the thinner edge, then the shop's order. Packages are tried by price and the search ends at the first price
 * above the best, so that most frames take a lens or two. Where nothing can be made, the frame answers with a package
 * that only its finished lens speaks against, else with any: the one that fewest rules stop, the cheapest of those.
 */

import type { Offer } from '../catalogue/catalogue.ts';
import type { Colourway, Frame, FrameSize } from '../catalogue/frame.ts';
import { sizeName } from '../catalogue/sizeNames.ts';
import { DECIDING_RULES } from '../rules/rules.ts';
import type { Finding, Verdict } from './answer.ts';
import { type LensPackage, lensPackages } from './frameListPackages.ts';
import { type PricedPackage, type PriceList, priceLists } from './frameListPrices.ts';
import { type ListRequest, pairIn } from './frameListRequest.ts';
import { type Judged, judgeIn, optionsOf, thickestOf } from './frameListTry.ts';
import { type ShopFrame, shopFrameShape } from './frameShape.ts';
import { judge, toFinding } from './judge.ts';
import type { PairRequest } from './request.ts';
import { situate } from './situation.ts';

/** What a frame answers with its best package, or with the one that is nearest to one. */
export interface FrameAnswer {
  readonly frame: string;
  readonly verdict: Verdict;
  /** The package that was judged: `quote` answers the same of it. */
  readonly request: PairRequest;
  /** Of the whole order, minor units; null where there is no price. */
  readonly totalMinor: number | null;
  /** What shoppers read for the size. */
  readonly sizeName: string;
  /** Names of the design and the material that were judged. */
  readonly lenses: readonly [design: string, material: string];
  /** Thickest edge of both lenses, mm; null where no lens could be computed. */
  readonly thickestMm: number | null;
  /** Stops and cautions, stops first. */
  readonly findings: readonly Finding[];
}

/** Which sizes and colourways of a frame are looked at. */
export type Within = (size: FrameSize, colourway: Colourway) => boolean;

/** The answer of a frame; null where it has no package for the use, or none within what is looked at. */
export type FrameJudge = (frame: Frame, within?: Within) => FrameAnswer | null;

/** A judge of frames for one request; it keeps prices, and nothing of one frame for another. */
export function frameJudge(shop: Omit<Offer, 'frames'>, asked: ListRequest): FrameJudge {
  const offer: Offer = { ...shop, frames: [] };
  const packages = new Map([false, true].map((sun) => [sun, lensPackages(shop, asked.use, sun)]));
  const prices = priceLists(offer, asked, (sun) => packages.get(sun) ?? []);
  const context = { offer, asked, prices };
  return (frame, within = () => true) => {
    const best = bestOf(placesOf(frame, within), context);
    return best && answerOf(context, best);
  };
}

interface Context {
  readonly offer: Offer;
  readonly asked: ListRequest;
  readonly prices: PriceList;
}

/** A package that was judged, and what it comes to. */
interface Tried extends Judged {
  readonly place: ShopFrame;
  readonly lenses: LensPackage;
  readonly totalMinor: number | null;
}

/** Each size in its cheapest colourway that can be had, in the shop's order; where none can be had, in the cheapest. */
function placesOf(frame: Frame, within: Within): readonly ShopFrame[] {
  return frame.sizes.flatMap((size) => {
    const open = frame.colourways.filter((colourway) => within(size, colourway));
    const had = open.filter(
      ({ code, stock }) =>
        stock !== 'sold-out' &&
        !frame.notOffered.some((not) => not.size === size.id && not.colourway === code),
    );
    const [colourway] = (had.length > 0 ? had : open).toSorted(
      (one, other) => one.priceDifferenceMinor - other.priceDifferenceMinor,
    );
    return colourway === undefined ? [] : [{ frame, size, colourway }];
  });
}

function bestOf(places: readonly ShopFrame[], { offer, asked, prices }: Context): Tried | null {
  const { habits } = offer.shop;
  const queues = places.map((place) => {
    return { place, packages: prices(place), next: 0, judgePackage: judgeIn(place, asked, habits) };
  });
  let best: Tried | null = null;
  for (;;) {
    const queue = cheapestOf(queues);
    const priced = queue?.packages[queue.next];
    if (!queue || !priced) break;
    if (best?.stops === 0 && priced.leastMinor > (best.totalMinor ?? 0)) break;
    queue.next += 1;
    const judged = queue.judgePackage(priced.lenses);
    const totalMinor = priced.totalMinor(judged.situation?.stock ?? null);
    const tried = { ...judged, place: queue.place, lenses: priced.lenses, totalMinor };
    if (best === null || isBetter(tried, best)) best = tried;
  }
  return best;
}

/** Packages of one place, cheapest first, and how many of them were tried. */
interface Queue {
  readonly packages: readonly PricedPackage[];
  readonly next: number;
}

/** The queue whose next package is cheapest, the first of equal ones; null where all are at their end. */
function cheapestOf<Q extends Queue>(queues: readonly Q[]): Q | null {
  let cheapest: Q | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const queue of queues) {
    const minor = queue.packages[queue.next]?.leastMinor ?? Number.POSITIVE_INFINITY;
    if (minor < least) {
      least = minor;
      cheapest = queue;
    }
  }
  return cheapest;
}

const CARE: Readonly<Record<Verdict, number>> = { makeable: 0, care: 1, refused: 2 };

function isBetter(one: Tried, than: Tried): boolean {
  const difference =
    Number(one.situation === null) - Number(than.situation === null) ||
    one.stops - than.stops ||
    (one.totalMinor ?? 0) - (than.totalMinor ?? 0) ||
    CARE[one.verdict] - CARE[than.verdict] ||
    edgeMm(one) - edgeMm(than);
  return difference < 0;
}

const edgeMm = ({ situation }: Tried) => (situation && thickestOf(situation)) ?? 0;

function answerOf({ offer, asked }: Context, best: Tried): FrameAnswer {
  const { shop } = offer;
  const { place, lenses, verdict, totalMinor } = best;
  const request = pairIn(place, lenses, asked, shop.habits);
  const situation =
    best.situation ?? situate(shop.habits, asked.date, request, shopFrameShape(place), optionsOf(lenses));
  // Notes are not told in a list, so the rules that only make notes are not asked.
  const telling = judge(situation, DECIDING_RULES).filter(({ level }) => level !== 'note');
  return {
    frame: place.frame.id,
    verdict,
    request,
    totalMinor,
    sizeName: sizeName(place.size),
    lenses: [situation.design.name, situation.material.name],
    thickestMm: thickestOf(situation),
    findings: telling.map((outcome) => toFinding(offer, outcome)),
  };
}
