/** Every option of one kind put in the place of the present one: what it would do to this pair and its price. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Finding, Verdict } from './answer.ts';
import { excludedSentence } from './excluded.ts';
import { verdictOf } from './judge.ts';
import { type JudgedPair, judgeSituated, type SituatedPair, situatePair } from './judgePair.ts';
import { optionClaim, type Weighed } from './optionClaim.ts';
import { optionRemedy } from './optionRemedy.ts';
import type { BLANK_CHOICES, LensesRequest, PairRequest, QuoteRequest } from './request.ts';
import { type Said, saidOnce } from './sentences.ts';
import { orderTotal } from './total.ts';
import { sharpFinder, type TradeOff, tradeOffOf } from './tradeOff.ts';

export const LENS_CHOICES = ['design', 'material', 'tint', 'coating'] as const;
export type LensChoice = (typeof LENS_CHOICES)[number];

/** What is reported on: the lens options, and ready-made lenses beside those made to order. */
export const REPORTED_CHOICES = [...LENS_CHOICES, 'blank'] as const;
export type ReportedChoice = (typeof REPORTED_CHOICES)[number];

/** One option in the place of the present one, all else as it is. */
export interface OptionReport {
  readonly id: string;
  readonly chosen: boolean;
  /** Of this option: what stands in the way of every option of its kind is left out. */
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  /** Thickest edge of both lenses, mm; null where no lens could be computed. */
  readonly thickestMm: number | null;
  /** Both lenses, g. */
  readonly massG: number | null;
  /** All that it is compared by apart from its price; null where the package cannot be read. */
  readonly tradeOff: TradeOff | null;
  /** A sentence with the names of the chosen things that it does not go with; null where it goes with all. */
  readonly excludes: string | null;
  /** A sentence of how its edge and weight compare with the present option's; null where there is nothing to say. */
  readonly claim: string | null;
  /** Total of the order with it less the present total, minor units; null where there is no price. */
  readonly differenceMinor: number | null;
}

/** Reports on every option of one kind for the pair at `at`, in the shop's order. */
export const optionReports = (
  offer: Offer,
  request: QuoteRequest,
  at: number,
  kind: ReportedChoice,
): readonly OptionReport[] => optionReporter(offer, request, at)(kind);

/** The same for one kind after another: a package that is among the options of several is judged once. */
export function optionReporter(
  offer: Offer,
  request: QuoteRequest,
  at: number,
): (kind: ReportedChoice) => readonly OptionReport[] {
  const present = request.pairs[at];
  if (present === undefined) return () => [];
  const said = saidOnce(offer);
  const { situated, judge } = packages(offer, request.date, present, said);
  const total = orderTotal(offer, request, at);
  const price = (pair: SituatedPair | null) => pair && total(pair.resolved.shopFrame, pair.situation);
  const sharpDeg = sharpFinder();
  const weigh = (pair: JudgedPair | null): Weighed | null =>
    pair && { situation: pair.situation, tradeOff: tradeOffOf(pair.situation, sharpDeg) };
  const now = judge(present.lenses);
  const here = weigh(now);
  const presentMinor = price(now);
  return (kind) => {
    const judged = optionsOf(offer, kind).map((id) => ({
      id,
      pair: judge({ ...present.lenses, [kind]: id }),
    }));
    const shared = sharedFindings(judged.map(({ pair }) => pair));
    const isShared = (finding: Finding) => shared.has(keyOf(finding));
    const ways = { offer, pair: present, situated, said, price, isShared };
    return judged.map(({ id, pair }) => {
      const own = (pair?.answer.findings ?? []).filter((finding) => !isShared(finding));
      const stopped = own.findLastIndex(({ level }) => level === 'stop');
      const remedy = pair === null || stopped < 0 ? null : optionRemedy(ways, kind, id, pair);
      const findings = own.map((finding, at) => (at === stopped ? { ...finding, remedy } : finding));
      const totalMinor = price(pair);
      const weighed = weigh(pair);
      return {
        id,
        chosen: (present.lenses[kind] ?? (kind === 'blank' ? 'auto' : null)) === id,
        verdict: verdictOf(findings),
        findings,
        ...figuresOf(weighed?.tradeOff ?? null),
        excludes:
          pair === null || kind === 'blank' ? null : excludedSentence(offer.words, pair.situation, kind),
        claim: here && weighed && optionClaim(offer.words, here, weighed),
        differenceMinor: totalMinor === null || presentMinor === null ? null : totalMinor - presentMinor,
      };
    });
  };
}

/** The pair with other lenses in it, each read once, and judged once where it is asked for. */
function packages(offer: Offer, date: string, present: PairRequest, said: Said) {
  const situated = once((lenses) => situatePair(offer, date, { ...present, lenses }, '', []));
  const judge = once((lenses): JudgedPair | null => {
    const pair = situated(lenses);
    return pair && judgeSituated(pair, said);
  });
  return { situated, judge };
}

function once<T>(make: (lenses: LensesRequest) => T) {
  const known = new Map<string, T>();
  return (lenses: LensesRequest): T => {
    const { use, design, material, tint, coating, blank = 'auto' } = lenses;
    const key = JSON.stringify([use, design, material, tint, coating, blank]);
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = make(lenses);
    known.set(key, made);
    return made;
  };
}

function optionsOf(offer: Offer, kind: ReportedChoice): readonly string[] {
  if (kind === 'blank') return ['auto', 'stock', 'surfaced'] satisfies (typeof BLANK_CHOICES)[number][];
  const lists = {
    design: offer.designs,
    material: offer.materials,
    tint: offer.tints,
    coating: offer.coatings,
  };
  return lists[kind].map(({ id }) => id);
}

/** What every option of a kind meets alike says nothing about any one of them. */
function sharedFindings(pairs: readonly (JudgedPair | null)[]): ReadonlySet<string> {
  const [first, ...rest] = pairs.map((pair) => new Set((pair?.answer.findings ?? []).map(keyOf)));
  if (first === undefined || rest.length === 0) return new Set();
  return new Set([...first].filter((key) => rest.every((keys) => keys.has(key))));
}

const keys = new WeakMap<Finding, string>();

function keyOf(finding: Finding): string {
  const known = keys.get(finding);
  if (known !== undefined) return known;
  const key = `${finding.rule}|${finding.eye}|${finding.message}`;
  keys.set(finding, key);
  return key;
}

const figuresOf = (tradeOff: TradeOff | null): Pick<OptionReport, 'thickestMm' | 'massG' | 'tradeOff'> => ({
  thickestMm: tradeOff?.thickestMm ?? null,
  massG: tradeOff?.massG ?? null,
  tradeOff,
});
