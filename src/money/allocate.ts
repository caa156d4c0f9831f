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
  const whole = sumMinor(weights);
  if (amountMinor === 0) return weights.map(() => 0);
  if (whole === 0) throw new RangeError(`Nothing to split ${amountMinor} over: every weight is 0.`);

  const shares = weights.map((weight) => divided(amountMinor, weight, whole));
  const parts = shares.map(({ part }) => part);
  const missing = amountMinor - sumMinor(parts);
  if (missing === 0) return parts;
  // The sort is stable, so that equal remainders keep their order.
  const byRemainder = shares
    .map(({ remainder }, place) => ({ place, remainder }))
    .sort((a, b) => b.remainder - a.remainder);
  for (const { place } of byRemainder.slice(0, missing)) parts[place] = (parts[place] ?? 0) + 1;
  return parts;
}

/** amount x weight / whole, rounded down, and what is left over; exact for numbers of any size. */
function divided(
  amount: number,
  weight: number,
  whole: number,
): { readonly part: number; readonly remainder: number } {
  const product = amount * weight;
  if (Number.isSafeInteger(product)) {
    const remainder = product % whole;
    return { part: (product - remainder) / whole, remainder };
  }
  const exact = BigInt(amount) * BigInt(weight);
  return { part: Number(exact / BigInt(whole)), remainder: Number(exact % BigInt(whole)) };
}
