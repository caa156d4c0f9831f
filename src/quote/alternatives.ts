/**
 * From the present package, the best packages of the same frame that can be made: thinnest, lightest, widest in
 * sharp-view angle, least reflecting, cheapest. The tint stays, and the kind of design: a reader is not offered
 * distance lenses because they are thin. Every package of the frame is looked at, ready-made and made to order; none
 * is guessed. Of packages that are as good as each other the one with the fewest and smallest changes is offered.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import { reflectedPercent } from '../rules/lensLight.ts';
import { round1, round2 } from '../rules/round.ts';
import { sharpAngles } from '../rules/sharpAngle.ts';
import type { Alternative } from './answer.ts';
import { CHANGE_KINDS, changeName, type PackageChange } from './change.ts';
import type { PairRequest, QuoteRequest } from './request.ts';
import { type Package, packagesOf } from './space.ts';

export const ALTERNATIVE_AIMS = ['thinnest', 'lightest', 'widest', 'least-reflecting', 'cheapest'] as const;
export type AlternativeAim = (typeof ALTERNATIVE_AIMS)[number];

/** What a package is compared by; less is better, null: cannot be said. */
type Measure = (one: Package) => number | null;

/**
 * Gains below which nothing is offered, in the unit of the aim: a tenth of a millimetre at an edge or of a degree of
 * gaze is below what a wearer notices and a bench holds, and money below one major unit pays for no second thought.
 */
const leastGain = ({ shop }: Offer): Readonly<Record<AlternativeAim, number>> => ({
  thinnest: 0.2,
  lightest: 1,
  widest: 1,
  'least-reflecting': 0.5,
  cheapest: 10 ** shop.currencyDigits,
});

/** A package with the blanks it was computed for; null: those that were asked for. */
interface Candidate {
  readonly one: Package;
  readonly blank: 'stock' | 'surfaced' | null;
}

/** The best packages by each aim, with what changes and by how much; an aim that the present one meets is left out. */
export function alternativesTo(offer: Offer, request: QuoteRequest, at: number): readonly Alternative[] {
  const pair = request.pairs[at];
  if (pair === undefined) return [];
  const packages = packagesOf(offer, request, at);
  const present = packages.find((one) => isPresent(one, pair));
  if (present === undefined) return [];
  const { design } = present.situation;
  const able = [...packages.map((one) => ({ one, blank: null })), ...otherBlanks(offer, request, at)].filter(
    ({ one }) =>
      one.verdict !== 'refused' && one.tint === present.tint && one.situation.design.kind === design.kind,
  );
  return ALTERNATIVE_AIMS.flatMap((aim) => {
    const among = aim === 'widest' ? able.filter(({ one }) => one.design === present.design) : able;
    return bestBy(offer, pair, present, among, aim) ?? [];
  });
}

/** The same packages from the blanks that were not asked for. `auto` takes stock wherever stock serves. */
function otherBlanks(offer: Offer, request: QuoteRequest, at: number): readonly Candidate[] {
  const asked = request.pairs[at]?.lenses.blank ?? 'auto';
  const blank = asked === 'surfaced' ? 'stock' : 'surfaced';
  const pairs = request.pairs.map((pair, index) =>
    index === at ? { ...pair, lenses: { ...pair.lenses, blank } as const } : pair,
  );
  return packagesOf(offer, { ...request, pairs }, at).map((one) => ({ one, blank }));
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
  among: readonly Candidate[],
  aim: AlternativeAim,
): Alternative | null {
  const measure = aim === 'widest' ? keptByLens(MEASURES[aim]) : MEASURES[aim];
  const from = measure(present);
  if (from === null) return null;
  const least = leastGain(offer)[aim];
  const gaining = among.flatMap((candidate) => {
    const value = measure(candidate.one);
    // The figures carry two decimals: without a margin 0.2 mm would now and then fall short of itself.
    return value === null || from - value < least - 1e-6
      ? []
      : [{ one: candidate.one, value, changes: changesBetween(present, candidate) }];
  });
  const most = Math.min(...gaining.map(({ value }) => value));
  const [best] = gaining
    .filter(({ value }) => value - most < least)
    .sort(
      (a, b) =>
        a.changes.length - b.changes.length ||
        largestOf(a.changes) - largestOf(b.changes) ||
        a.value - b.value ||
        (a.one.totalMinor ?? 0) - (b.one.totalMinor ?? 0),
    );
  if (best === undefined) return null;
  const { changes } = best;
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

function changesBetween(present: Package, { one, blank }: Candidate): readonly PackageChange[] {
  const blanks = blank === null ? [] : [{ kind: 'blank' as const, value: blank }];
  const options = (['design', 'material', 'coating', 'tint'] as const).flatMap((kind) =>
    present[kind] === one[kind] ? [] : [{ kind, value: one[kind] }],
  );
  return [...blanks, ...options];
}

/** How large the largest change is for a wearer. */
const largestOf = (changes: readonly PackageChange[]) =>
  Math.max(...changes.map(({ kind }) => CHANGE_KINDS.indexOf(kind)));
