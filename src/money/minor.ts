/**
 * Amounts are whole numbers of a currency's smallest unit ("minor units": cents), held as safe integers.
 * Everything that adds or divides them checks, so that a fraction or an overflow can never pass for money.
 */

/** `minor` itself; throws a RangeError that names `what` when it is no safe integer. */
export function checkMinor(minor: number, what = 'amount'): number {
  if (!Number.isSafeInteger(minor))
    throw new RangeError(`The ${what} must be a whole number of minor units within ±2^53, found ${minor}.`);
  return minor === 0 ? 0 : minor;
}

/** Sum of amounts in minor units; throws a RangeError when a term or the sum is no safe integer. */
export function sumMinor(amountsMinor: readonly number[]): number {
  let sum = 0;
  for (const amount of amountsMinor) sum = checkMinor(sum + checkMinor(amount), 'sum');
  return sum;
}
