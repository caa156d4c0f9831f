import { checkMinor } from './minor.ts';
import { divideHalfAwayFromZero } from './rounding.ts';

/** Parts per million in a whole: 5.5 % is 55 000. */
const WHOLE_PPM = 1_000_000n;

/**
 * The share of an amount: `amountMinor` times `sharePpm` parts per million, in minor units, halves away from zero.
 * Either may be negative. Throws a RangeError when one of them or the result is no safe integer.
 */
export function shareOf(amountMinor: number, sharePpm: number): number {
  const product =
    BigInt(checkMinor(amountMinor)) * BigInt(checkMinor(sharePpm, 'share in parts per million'));
  return checkMinor(Number(divideHalfAwayFromZero(product, WHOLE_PPM)), 'share');
}
