/** Refusals for numbers outside the domain of a formula, so that no NaN travels on. */

/**
 * The value itself when it is a finite number from `least` to `most`; throws a RangeError that names the quantity,
 * its unit, what was expected and what was found.
 */
export function within(quantity: string, value: number, least: number, most: number, unit: string): number {
  if (Number.isFinite(value) && value >= least && value <= most) return value;
  const range =
    most === Infinity
      ? `${least} ${unit} or more`
      : least === -Infinity
        ? `a finite number of ${unit}`
        : `${least} to ${most} ${unit}`;
  throw new RangeError(`${quantity}: expected ${range}, found ${value}.`.replaceAll('  ', ' '));
}
