/** What differs between an answer as the buyer saw it and as the shop gives it now. */
import type { Eye } from '../optics/types.ts';
import type { ShownLens, ShownPair } from '../order/order.ts';
import { plainText } from '../order/text.ts';
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

interface Amount {
  readonly label: string;
  readonly amount: number;
}

/** Lines are told apart by their label, as plain as an order holds it; equal labels pair up in their order. */
export function priceDifferences(shown: readonly Amount[], now: readonly Amount[]): PriceDifference[] {
  const left = now.map(({ label, amount }) => ({ label: plainText(label), amount }));
  const differences: PriceDifference[] = [];
  for (const { label, amount } of shown) {
    const at = left.findIndex((line) => line.label === label);
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

type Told = Pick<Finding, 'rule' | 'level' | 'eye' | 'message'>;

/** Findings of a pair that only one side has, the new ones first. */
export function findingDifferences(
  pair: number,
  shown: readonly Told[],
  now: readonly Told[],
): FindingDifference[] {
  const key = ({ rule, level, eye, message }: Told) => [rule, level, eye, plainText(message)].join('\n');
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
