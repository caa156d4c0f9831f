/** Every option of one kind put in the place of the present one: what it would do to this pair and its price. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Finding, Verdict } from './answer.ts';
import { excludedSentence } from './excluded.ts';
import { verdictOf } from './judge.ts';
import { type JudgedPair, judgePair } from './judgePair.ts';
import { optionClaim, type Weighed } from './optionClaim.ts';
import { optionRemedy } from './optionRemedy.ts';
import type { BLANK_CHOICES, LensesRequest, PairRequest, QuoteRequest } from './request.ts';
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
  const judge = judgeOnce(offer, request.date, present);
  const total = orderTotal(offer, request, at);
  const price = (pair: JudgedPair | null) => pair && total(pair.resolved.shopFrame, pair.situation);
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
    const ways = { offer, pair: present, judge, price, isShared };
    return judged.map(({ id, pair }) => {
      const own = (pair?.answer.findings ?? []).filter((finding) => !isShared(finding));
      const stopped = own.findLastIndex(({ level }) => level === 'stop');
      const remedy = stopped < 0 ? null : optionRemedy(ways, kind, id);
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

/** The pair judged with other lenses in it, each of them once. */
function judgeOnce(offer: Offer, date: string, present: PairRequest) {
  const known = new Map<string, JudgedPair | null>();
  return (lenses: LensesRequest): JudgedPair | null => {
    const { use, design, material, tint, coating, blank = 'auto' } = lenses;
    const key = JSON.stringify([use, design, material, tint, coating, blank]);
    const found = known.get(key);
    if (found !== undefined) return found;
    const judged = judgePair(offer, date, { ...present, lenses }, '', []);
    known.set(key, judged);
    return judged;
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

const keyOf = ({ rule, eye, message }: Finding) => `${rule}|${eye}|${message}`;

const figuresOf = (tradeOff: TradeOff | null): Pick<OptionReport, 'thickestMm' | 'massG' | 'tradeOff'> => ({
  thickestMm: tradeOff?.thickestMm ?? null,
  massG: tradeOff?.massG ?? null,
  tradeOff,
});
