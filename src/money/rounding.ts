/** Where a fraction of a minor unit is decided: here and nowhere else. */

/**
 * numerator / denominator to the nearest whole number, halves away from zero (commercial practice: 2.5 is 3,
 * -2.5 is -3). The denominator is above 0. Exact for numbers of any size.
 */
export function divideHalfAwayFromZero(numerator: bigint, denominator: bigint): bigint {
  const size = numerator < 0n ? -numerator : numerator;
  const rounded = (2n * size + denominator) / (2n * denominator);
  return numerator < 0n ? -rounded : rounded;
}
