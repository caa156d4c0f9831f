import type { Surcharge } from '../catalogue/limit.ts';
import type { PricedLenses } from './pair.ts';

const STRENGTHS = {
  'strongest-meridian': 'strongestMeridianD',
  cylinder: 'cylinderD',
  prism: 'prism',
  add: 'addD',
} as const;

/** Size of a strength in steps of 0.01, so that the noise of a computed prism crosses no edge of a band. */
function strength(lenses: PricedLenses, of: Surcharge['of']): number {
  const value = lenses[STRENGTHS[of]];
  if (!Number.isFinite(value)) throw new RangeError(`The ${of} of lenses to be priced is ${value}.`);
  return Math.round(Math.abs(value) * 100) / 100;
}

/**
 * The surcharges that these lenses carry, in the order of the list: those whose band holds the stronger eye's
 * value (above the lower edge, up to and with the upper). Throws a RangeError for a strength that is not finite.
 */
export function surchargesFor(lenses: PricedLenses, declared: readonly Surcharge[]): Surcharge[] {
  return declared.filter(({ of, above, upTo }) => {
    const value = strength(lenses, of);
    return value > above && (upTo === null || value <= upTo);
  });
}
