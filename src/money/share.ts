import { checkMinor } from './minor.ts';
import { divideHalfAwayFromZero } from './rounding.ts';

/** Parts per million in a whole: 5.5 % is 55 000. */
const WHOLE_PPM = 1_000_000;
const SAFE_PRODUCT = Number.MAX_SAFE_INTEGER - WHOLE_PPM;

/**
 * The share of an amount: `amountMinor` times `sharePpm` parts per million, in minor units, halves away from zero.
 * Either may be negative. Throws a RangeError when one of them or the result is no safe integer.
 */
export function shareOf(amountMinor: number, sharePpm: number): number {
  const amount = checkMinor(amountMinor);
  const ppm = checkMinor(sharePpm, 'share in parts per million');
  const product = amount * ppm;
  // Half a unit more must be a safe integer too.
  if (Math.abs(product) < SAFE_PRODUCT) return checkMinor(halfAwayFromZero(product), 'share');
  return checkMinor(Number(divideHalfAwayFromZero(BigInt(amount) * BigInt(ppm), BigInt(WHOLE_PPM))), 'share');
}

/** A product in parts per million as whole units: what `divideHalfAwayFromZero` gives, for products this small. */
function halfAwayFromZero(product: number): number {
  const size = Math.abs(product) + WHOLE_PPM / 2;
  const whole = (size - (size % WHOLE_PPM)) / WHOLE_PPM;
  return product < 0 ? -whole : whole;
}
