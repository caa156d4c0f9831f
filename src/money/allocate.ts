import { checkMinor, sumMinor } from './minor.ts';

/**
 * `amountMinor` split in proportion to `weights` by largest remainder: whole minor units whose sum is the amount
 * exactly, each within one unit of its exact share. Equal remainders go to the earlier place. A negative amount
 * is the mirror of the positive one. When the amount is at most the sum of the weights, no part exceeds its weight.
 *
 * Throws a RangeError when a weight is negative, or when all are 0 and there is something to split.
 */
export function allocate(amountMinor: number, weights: readonly number[]): number[] {
  checkMinor(amountMinor);
  if (amountMinor < 0) return allocate(-amountMinor, weights).map((part) => (part === 0 ? 0 : -part));
  if (weights.some((weight) => weight < 0))
    throw new RangeError(`A weight is below 0: ${weights.join(', ')}.`);
  const whole = BigInt(sumMinor(weights));
  if (amountMinor === 0) return weights.map(() => 0);
  if (whole === 0n) throw new RangeError(`Nothing to split ${amountMinor} over: every weight is 0.`);

  const exact = weights.map((weight) => BigInt(amountMinor) * BigInt(weight));
  const parts = exact.map((product) => Number(product / whole));
  const missing = amountMinor - sumMinor(parts);
  // The sort is stable, so that equal remainders keep their order.
  const byRemainder = exact
    .map((product, place) => ({ place, remainder: Number(product % whole) }))
    .sort((a, b) => b.remainder - a.remainder);
  for (const { place } of byRemainder.slice(0, missing)) parts[place] = (parts[place] ?? 0) + 1;
  return parts;
}
