/** What differs between an answer as the buyer saw it and as the shop gives it now. */
import type { Eye } from '../optics/types.ts';
import type { ShownLens, ShownPair } from '../order/order.ts';
import { plainText } from '../order/text.ts';
import type { QuoteLine } from '../pricing/line.ts';
import type { Finding } from '../quote/answer.ts';

/** A line of the price, as the shopper saw it and as it is reckoned now; minor units, null where it is not there. */
export interface PriceDifference {
  readonly label: string;
  readonly shownMinor: number | null;
  readonly nowMinor: number | null;
}

/** A figure of a lens that was shown otherwise: mm, D or g. */
export interface FigureDifference {
  readonly pair: number;
  readonly eye: Eye;
  readonly figure: keyof ShownLens;
  readonly shown: number | null;
  readonly now: number | null;
}

/** A finding that only one side has. */
export interface FindingDifference {
  readonly pair: number;
  readonly level: Finding['level'];
  readonly message: string;
  /** `gone`: the shopper saw it; `new`: it was not shown. */
  readonly change: 'gone' | 'new';
}

type Line = Pick<QuoteLine, 'kind' | 'pair' | 'label' | 'amount' | 'source'>;

type Told = Pick<Finding, 'rule' | 'level' | 'eye' | 'message' | 'figures'>;

/** How both sides of a difference are told apart: by their words, or by what holds in every language. */
export interface Names {
  readonly line: (line: Line) => string;
  readonly finding: (finding: Told) => string;
}

/** For an order in the language of the workroom: texts as plain as an order holds them. */
export const BY_WORDS: Names = {
  line: ({ label }) => plainText(label),
  finding: ({ rule, level, eye, message }) => [rule, level, eye, plainText(message)].join('\n'),
};

/** For an order in another language: sources of prices, and the numbers that findings are told with. */
export const BY_FIGURES: Names = {
  line: ({ kind, pair, source }) => `${kind} ${pair} ${source}`,
  finding: ({ rule, level, eye, figures }) => {
    const numbers = Object.entries(figures).filter(([, value]) => typeof value === 'number');
    return [rule, level, eye, ...numbers.map(([name, value]) => `${name} ${value}`).sort()].join('\n');
  },
};

/** Lines are told apart by their name; equal ones pair up in their order. */
export function priceDifferences(
  shown: readonly Line[],
  now: readonly Line[],
  { line: nameOf } = BY_WORDS,
): PriceDifference[] {
  const left = now.map((line) => ({ name: nameOf(line), label: plainText(line.label), amount: line.amount }));
  const differences: PriceDifference[] = [];
  for (const line of shown) {
    const { label, amount } = line;
    const name = nameOf(line);
    const at = left.findIndex((one) => one.name === name);
    const [found] = at < 0 ? [] : left.splice(at, 1);
    if (found?.amount !== amount)
      differences.push({ label, shownMinor: amount, nowMinor: found?.amount ?? null });
  }
  return [
    ...differences,
    ...left.map(({ label, amount }) => ({ label, shownMinor: null, nowMinor: amount })),
  ];
}

/** Figures of a pair's lenses that differ. */
export function figureDifferences(pair: number, shown: ShownPair, now: ShownPair): FigureDifference[] {
  return (['right', 'left'] as const).flatMap((eye) => {
    const before = shown[eye];
    const after = now[eye];
    const figures = Object.keys(after ?? before ?? {}) as (keyof ShownLens)[];
    return figures
      .map((figure) => ({ pair, eye, figure, shown: before?.[figure] ?? null, now: after?.[figure] ?? null }))
      .filter((one) => one.shown !== one.now);
  });
}

/** Findings of a pair that only one side has, the new ones first. */
export function findingDifferences(
  pair: number,
  shown: readonly Told[],
  now: readonly Told[],
  { finding: key } = BY_WORDS,
): FindingDifference[] {
  const before = new Set(shown.map(key));
  const after = new Set(now.map(key));
  const told = (change: FindingDifference['change']) => (finding: Told) => {
    return { pair, level: finding.level, message: finding.message, change };
  };
  return [
    ...now.filter((finding) => !before.has(key(finding))).map(told('new')),
    ...shown.filter((finding) => !after.has(key(finding))).map(told('gone')),
  ];
}
