/**
 * From the present package, the best packages of the same frame that can be made: thinnest, lightest, widest in
 * sharp-view angle, least reflecting, cheapest. The tint stays, and the kind of design: a reader is not offered
 * distance lenses because they are thin. Every package of the frame is looked at; none is guessed.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import { reflectedPercent } from '../rules/lensLight.ts';
import { round1, round2 } from '../rules/round.ts';
import type { Alternative } from './answer.ts';
import { changeName, type PackageChange } from './change.ts';
import type { PairRequest, QuoteRequest } from './request.ts';
import { sharpAngles } from './sharpAngle.ts';
import { type Package, packagesOf } from './space.ts';

export const ALTERNATIVE_AIMS = ['thinnest', 'lightest', 'widest', 'least-reflecting', 'cheapest'] as const;
export type AlternativeAim = (typeof ALTERNATIVE_AIMS)[number];

/** What a package is compared by; less is better, null: cannot be said. */
type Measure = (one: Package) => number | null;

/** The best packages by each aim, with what changes and by how much; an aim that the present one meets is left out. */
export function alternativesTo(offer: Offer, request: QuoteRequest, at: number): readonly Alternative[] {
  const pair = request.pairs[at];
  if (pair === undefined) return [];
  const packages = packagesOf(offer, request, at);
  const present = packages.find((one) => isPresent(one, pair));
  if (present === undefined) return [];
  const { design } = present.situation;
  const able = packages.filter(
    (one) =>
      one.verdict !== 'refused' && one.tint === present.tint && one.situation.design.kind === design.kind,
  );
  return ALTERNATIVE_AIMS.flatMap((aim) => {
    const among = aim === 'widest' ? able.filter((one) => one.design === present.design) : able;
    return bestBy(offer, pair, present, among, aim) ?? [];
  });
}

/** A package without a tint or coating is that with the shop's clear ones. */
const isPresent = (one: Package, { lenses }: PairRequest) =>
  one.design === lenses.design &&
  one.material === lenses.material &&
  (lenses.tint === null ? one.situation.tint?.kind === 'clear' : one.tint === lenses.tint) &&
  (lenses.coating === null ? one.situation.coating?.faces === 'none' : one.coating === lenses.coating);

function bestBy(
  offer: Offer,
  pair: PairRequest,
  present: Package,
  among: readonly Package[],
  aim: AlternativeAim,
): Alternative | null {
  const measure = aim === 'widest' ? keptByLens(MEASURES[aim]) : MEASURES[aim];
  const from = measure(present);
  const best = among
    .map((one) => ({ one, value: measure(one) }))
    .filter(({ value }) => value !== null)
    .sort(
      (a, b) =>
        (a.value ?? 0) - (b.value ?? 0) ||
        changesBetween(present, a.one).length - changesBetween(present, b.one).length ||
        (a.one.totalMinor ?? 0) - (b.one.totalMinor ?? 0),
    )[0];
  if (best === undefined || from === null || best.value === null || best.value >= from) return null;
  const changes = changesBetween(present, best.one);
  const [was, is] = [Math.abs(from), Math.abs(best.value)];
  return {
    aim,
    changes,
    from: was,
    to: is,
    differenceMinor:
      best.one.totalMinor === null || present.totalMinor === null
        ? null
        : best.one.totalMinor - present.totalMinor,
    message: say(offer.words, `alternative.${aim}`, {
      changes: changes.map((change) => changeName(offer, pair, change)).join(', '),
      from: was,
      to: is,
    }),
  };
}

/** Each lens is measured once, however many packages share it. */
function keptByLens(measure: Measure): Measure {
  const known = new Map<string, number | null>();
  return (one) => {
    const key = `${one.design} ${one.material} ${one.situation.stock?.id ?? ''}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const value = measure(one);
    known.set(key, value);
    return value;
  };
}

const MEASURES: Readonly<Record<AlternativeAim, Measure>> = {
  thinnest: ({ situation: { right, left } }) =>
    right.lens && left.lens && round2(Math.max(right.lens.thickest.mm, left.lens.thickest.mm)),
  lightest: ({ situation: { right, left } }) =>
    right.lens && left.lens && round1(right.lens.massG + left.lens.massG),
  widest: ({ situation }) => {
    const angles = sharpAngles(situation);
    return angles && -angles.leastDeg;
  },
  'least-reflecting': ({ situation }) => reflectedPercent(situation),
  cheapest: ({ totalMinor }) => totalMinor,
};

function changesBetween(present: Package, other: Package): readonly PackageChange[] {
  return (['design', 'material', 'coating', 'tint'] as const).flatMap((kind) =>
    present[kind] === other[kind] ? [] : [{ kind, value: other[kind] }],
  );
}
