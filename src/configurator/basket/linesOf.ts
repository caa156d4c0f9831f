/** The lines of a price that belong to one pair, or to the order as a whole, with their sum. */
import type { QuoteLine } from '../../pricing/line.ts';
import type { PriceAnswer } from '../../quote/answer.ts';

export interface LinesSum {
  readonly lines: readonly QuoteLine[];
  /** Minor units. */
  readonly sumMinor: number;
}

/** Lines of the pair at an index; null: those of no pair. */
export function linesOf({ lines }: Pick<PriceAnswer, 'lines'>, at: number | null): LinesSum {
  const own = lines.filter(({ pair }) => pair === at);
  return { lines: own, sumMinor: own.reduce((sum, { amount }) => sum + amount, 0) };
}
