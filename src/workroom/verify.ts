/** An order looked at again before anything is bought for it: differences from what the shopper saw, and what to ask. */
import { shownOf } from '../order/shown.ts';
import {
  BY_FIGURES,
  BY_WORDS,
  type FigureDifference,
  type FindingDifference,
  figureDifferences,
  findingDifferences,
  type PriceDifference,
  priceDifferences,
} from './differences.ts';
import type { MovedFrame } from './formerFrames.ts';
import type { OpenedJob } from './openJob.ts';

/** What has to be looked at, as keys of the words `workroom.verify`. */
export type CheckItem =
  | 'readable'
  | 'price'
  | 'findings'
  | 'makeable'
  | 'prescription'
  | 'prescriber'
  | 'measured'
  | 'cautions'
  | 'lenses';

export interface Checked {
  readonly item: CheckItem;
  /** Null: not for this order. */
  readonly holds: boolean | null;
}

/** A reason to ask the buyer: a key of the words `workroom.call`, or a finding's own sentence. */
export interface CallBack {
  /** Index of the pair; null: the whole order. */
  readonly pair: number | null;
  readonly reason: 'price' | 'prescriber' | 'measured' | 'unreadable' | null;
  readonly message: string;
}

export interface Verification {
  /** Frames that the order names as they were called before. */
  readonly moved: readonly MovedFrame[];
  readonly prices: readonly PriceDifference[];
  readonly shownTotalMinor: number;
  /** Null where there is no price any more. */
  readonly nowTotalMinor: number | null;
  readonly findings: readonly FindingDifference[];
  readonly figures: readonly FigureDifference[];
  readonly checks: readonly Checked[];
  readonly calls: readonly CallBack[];
}

/** The verification of an opened job. Pure: all is judged for the order's date. */
export function verify(opened: OpenedJob): Verification {
  const { job, pairs, answer } = opened;
  const now = answer && shownOf(answer);
  const { shown } = job.order;
  const names = opened.sameLanguage ? BY_WORDS : BY_FIGURES;
  const prices = priceDifferences(shown.price.lines, now?.price.lines ?? [], names);
  const findings = pairs.flatMap((pair, at) =>
    pair === null ? [] : findingDifferences(at, shown.pairs[at]?.findings ?? [], pair.answer.findings, names),
  );
  const figures = shown.pairs.flatMap((before, at) => {
    const after = now?.pairs[at];
    return after === undefined ? [] : figureDifferences(at, before, after);
  });
  const samePrice = prices.length === 0 && now?.price.total === shown.price.total;
  return {
    moved: opened.moved,
    prices,
    shownTotalMinor: shown.price.total,
    nowTotalMinor: now?.price.total ?? null,
    findings,
    figures,
    checks: checksOf(opened, samePrice, findings.length + figures.length === 0),
    calls: callsOf(opened, samePrice, findings),
  };
}

function checksOf(opened: OpenedJob, samePrice: boolean, sameAnswer: boolean): Checked[] {
  const { pairs, faults } = opened;
  const judged = pairs.filter((pair) => pair !== null);
  const powered = judged.some(({ situation }) => situation.use !== 'none');
  const stopped = (rule: string) =>
    judged.some(({ answer }) =>
      answer.findings.some((finding) => finding.rule === rule && finding.level !== 'note'),
    );
  const undated = judged.some(({ situation }) => situation.use !== 'none' && situation.issued === null);
  const open = openCautions(opened);
  return [
    { item: 'readable', holds: faults.length === 0 },
    { item: 'price', holds: samePrice },
    { item: 'findings', holds: sameAnswer },
    { item: 'makeable', holds: judged.every(({ answer }) => answer.verdict !== 'refused') },
    { item: 'lenses', holds: judged.every(({ situation }) => lensesOf(situation)) },
    { item: 'prescription', holds: powered ? !stopped('prescription-validity') && !undated : null },
    { item: 'prescriber', holds: powered ? pairsWithout(opened, 'prescriber').length === 0 : null },
    { item: 'measured', holds: powered ? pairsWithout(opened, 'measured').length === 0 : null },
    { item: 'cautions', holds: open.length === 0 },
  ];
}

type Judged = NonNullable<OpenedJob['pairs'][number]>;

const lensesOf = ({ right, left }: Judged['situation']) => right.lens !== null && left.lens !== null;

/** Pairs with power of which it is not said who prescribed, or who measured. */
function pairsWithout({ job, pairs }: OpenedJob, what: 'prescriber' | 'measured'): number[] {
  return pairs.flatMap((pair, at) => {
    if (pair === null || pair.situation.use === 'none') return [];
    const told = job.order.pairs[at];
    const known =
      what === 'measured'
        ? told !== undefined && told.measuredBy !== 'nobody'
        : (told?.prescription?.prescriber.name ?? '') !== '';
    return known ? [] : [at];
  });
}

/** Cautions that hold now and that the shopper has not confirmed. */
const openCautions = ({ job, pairs }: Pick<OpenedJob, 'job' | 'pairs'>) =>
  pairs.flatMap((judged, pair) =>
    (judged?.answer.findings ?? [])
      .filter(({ level, rule }) => level === 'caution' && !job.order.pairs[pair]?.confirmed.includes(rule))
      .map(({ message }) => ({ pair, message })),
  );

function callsOf(
  opened: OpenedJob,
  samePrice: boolean,
  differences: readonly FindingDifference[],
): CallBack[] {
  const { pairs, faults } = opened;
  const calls: CallBack[] = faults.map(({ path, message }) => ({
    pair: null,
    reason: 'unreadable',
    message: `${path}: ${message}`,
  }));
  if (faults.length === 0 && !samePrice) calls.push({ pair: null, reason: 'price', message: '' });
  for (const reason of ['prescriber', 'measured'] as const)
    for (const pair of pairsWithout(opened, reason)) calls.push({ pair, reason, message: '' });
  const told = new Set<string>();
  const call = ({ pair, message }: { readonly pair: number; readonly message: string }) => {
    const key = `${pair} ${message}`;
    if (!told.has(key)) calls.push({ pair, reason: null, message });
    told.add(key);
  };
  pairs.forEach((judged, pair) => {
    for (const { level, message } of judged?.answer.findings ?? [])
      if (level === 'stop') call({ pair, message });
  });
  for (const difference of differences)
    if (difference.change === 'new' && difference.level !== 'note') call(difference);
  for (const caution of openCautions(opened)) call(caution);
  return calls;
}
