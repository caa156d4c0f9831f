/**
 * Where a package is refused: the smallest set of changes, frames of this shop included, after which it can be made.
 * Fewest changes first, then by their kinds, then by money. The search is bounded: any change of the lenses in each
 * size of the present frame, with or without its blank; else another frame with at most one change of the lenses.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import { sharpAngles } from '../rules/sharpAngle.ts';
import type { Situation } from '../rules/situation.ts';
import type { WayOut } from './answer.ts';
import { CHANGE_KINDS, changeName, changesOf, frameChanges, type PackageChange } from './change.ts';
import { judge, verdictOf } from './judge.ts';
import type { PairRequest, QuoteRequest } from './request.ts';
import { resolvePair } from './resolve.ts';
import { situate } from './situation.ts';
import { type Package, packagesOf } from './space.ts';
import { type OrderTotal, orderTotal } from './total.ts';
import { asksHeights, withChanges } from './withChanges.ts';

interface Found {
  readonly situation: Situation;
  readonly changes: readonly PackageChange[];
  readonly totalMinor: number | null;
}

/** The nearest package that can be made; null where there is none within the bound. */
export function wayOutOf(
  offer: Offer,
  request: QuoteRequest,
  at: number,
  presentMinor: number | null,
): WayOut | null {
  const pair = request.pairs[at];
  if (pair === undefined) return null;
  const found =
    nearest(inThisFrame(offer, request, at, pair)) ?? nearest(inOtherFrames(offer, request, at, pair));
  if (found === null) return null;
  const names = found.changes.map((change) => changeName(offer, pair, change)).join(', ');
  return {
    changes: found.changes,
    differenceMinor:
      found.totalMinor === null || presentMinor === null ? null : found.totalMinor - presentMinor,
    message: [
      say(offer.words, 'way-out.message', { changes: names }),
      ...(asksHeights(pair, found.changes) ? [say(offer.words, 'way-out.heights')] : []),
      ...sharpText(offer, request.date, pair, found),
    ].join(' '),
  };
}

/** How far a narrow view is sharp, and how far it would be made to order; none where nothing is to be said. */
function sharpText(
  offer: Offer,
  date: string,
  pair: PairRequest,
  { changes, situation }: Found,
): readonly string[] {
  const angles = sharpAngles(situation);
  if (angles === null || angles.leastDeg >= situation.habits.leastSharpAngleDeg) return [];
  const plain = [say(offer.words, 'way-out.sharp', { angleDeg: angles.leastDeg })];
  if (situation.stock === null) return plain;
  const made = withChanges(offer, pair, [...changes, { kind: 'blank', value: 'surfaced' }]);
  const resolved = resolvePair(offer, made, '', []);
  if (resolved === null) return plain;
  const other = situate(offer.shop.habits, date, resolved.request, resolved.frame, resolved.lenses);
  const surfacedDeg = sharpAngles(other)?.leastDeg;
  // What is no wider, or cannot be made, is no advice.
  if (surfacedDeg === undefined || surfacedDeg <= angles.leastDeg || verdictOf(judge(other)) === 'refused')
    return plain;
  return [say(offer.words, 'way-out.sharp-surfaced', { angleDeg: angles.leastDeg, surfacedDeg })];
}

function inThisFrame(offer: Offer, request: QuoteRequest, at: number, pair: PairRequest): readonly Found[] {
  const sizes: readonly (PackageChange | null)[] = [null, ...changesOf(offer, pair, 'size')];
  const blanks: readonly (PackageChange | null)[] =
    pair.lenses.blank === undefined || pair.lenses.blank === 'auto'
      ? [null]
      : [null, { kind: 'blank', value: 'auto' }];
  return sizes.flatMap((size) =>
    blanks.flatMap((blank) => {
      const before = [size, blank].filter((change) => change !== null);
      const changed = withChanges(offer, pair, before);
      const pairs = request.pairs.map((one, index) => (index === at ? changed : one));
      return packagesOf(offer, { ...request, pairs }, at)
        .filter(({ verdict }) => verdict !== 'refused')
        .map((one) => ({
          changes: [...before, ...lensChanges(pair, one)],
          totalMinor: one.totalMinor,
          situation: one.situation,
        }));
    }),
  );
}

function lensChanges({ lenses }: PairRequest, one: Package): readonly PackageChange[] {
  const plain = {
    tint: one.situation.tint?.kind === 'clear',
    coating: one.situation.coating?.faces === 'none',
  };
  return (['material', 'design', 'coating', 'tint'] as const).flatMap((kind) => {
    const same = lenses[kind] === one[kind];
    const none = (kind === 'tint' || kind === 'coating') && lenses[kind] === null && plain[kind];
    return same || none ? [] : [{ kind, value: one[kind] }];
  });
}

function inOtherFrames(offer: Offer, request: QuoteRequest, at: number, pair: PairRequest): readonly Found[] {
  const total = orderTotal(offer, request, at);
  const lensKinds = ['material', 'design', 'coating'] as const;
  const one = (changes: readonly PackageChange[]) => tried(offer, request.date, pair, changes, total);
  const lenses = lensKinds.flatMap((kind) => changesOf(offer, pair, kind));
  for (const frames of frameChanges(offer, pair)) {
    const alone = frames.flatMap((frame) => one([frame]));
    if (alone.length > 0) return alone;
    const changed = frames.flatMap((frame) => lenses.flatMap((lens) => one([frame, lens])));
    if (changed.length > 0) return changed;
  }
  return [];
}

function tried(
  offer: Offer,
  date: string,
  pair: PairRequest,
  changes: readonly PackageChange[],
  total: OrderTotal,
): readonly Found[] {
  const resolved = resolvePair(offer, withChanges(offer, pair, changes), '', []);
  if (resolved === null) return [];
  const { request, frame, lenses, shopFrame } = resolved;
  const situation = situate(offer.shop.habits, date, request, frame, lenses);
  if (verdictOf(judge(situation)) === 'refused') return [];
  return [{ changes, totalMinor: total(shopFrame, situation), situation }];
}

/** Fewest changes, then the kinds nearest to the wearer's choice, then money. */
function nearest(found: readonly Found[]): Found | null {
  const weight = ({ changes }: Found) =>
    Math.max(0, ...changes.map(({ kind }) => CHANGE_KINDS.indexOf(kind)));
  return (
    found.toSorted(
      (one, other) =>
        one.changes.length - other.changes.length ||
        weight(one) - weight(other) ||
        (one.totalMinor ?? Number.POSITIVE_INFINITY) - (other.totalMinor ?? Number.POSITIVE_INFINITY),
    )[0] ?? null
  );
}
