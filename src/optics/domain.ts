/** Refusals for numbers outside the domain of a formula, so that no NaN travels on. */

/**
 * The value itself when it is a finite number from `least` to `most`; throws a RangeError that names the quantity,
 * its unit (empty for a pure number), what was expected and what was found.
 */
export function within(quantity: string, value: number, least: number, most: number, unit: string): number {
  if (Number.isFinite(value) && value >= least && value <= most) return value;
  throw new RangeError(`${quantity}: expected ${range(least, most, unit)}, found ${value}.`);
}

function range(least: number, most: number, unit: string): string {
  const of = unit === '' ? '' : ` ${unit}`;
  if (least === -Infinity) return `a finite number${unit === '' ? '' : ` of ${unit}`}`;
  return most === Infinity ? `${least}${of} or more` : `${least} to ${most}${of}`;
}
