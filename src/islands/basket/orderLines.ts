/** The price of several pairs in short: one line a pair with its sum, then the lines of the order as a whole. */
import type { PairStanding } from '../../configurator/basket/answerBasket.ts';
import { linesOf } from '../../configurator/basket/linesOf.ts';
import type { QuoteLine } from '../../pricing/line.ts';
import type { PriceAnswer } from '../../quote/answer.ts';
import type { Telling } from '../keeping/telling.ts';

export function orderLines(
  { say }: Telling,
  price: PriceAnswer,
  pairs: readonly (PairStanding | null)[],
): readonly QuoteLine[] {
  const ofPairs = pairs.flatMap((pair, index): QuoteLine[] => {
    if (pair === null) return [];
    const model = pair.names.model || say('basket.ownFrame');
    return [
      {
        kind: 'frame',
        pair: pair.at,
        label: say('basket.pair', { number: index + 1, model }),
        amount: linesOf(price, pair.at).sumMinor,
        source: `pair/${pair.id}`,
      },
    ];
  });
  return [...ofPairs, ...linesOf(price, null).lines];
}
