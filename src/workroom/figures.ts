/** Figures as the papers show them: typographic minus, units apart, no more digits than the bench can use. */
import { toMinusCylinder } from '../optics/prescription.ts';
import { nasalSign, resolvePrism } from '../optics/prismBase.ts';
import type { Eye, PointMm, PrismVector, SpheroCylinder } from '../optics/types.ts';
import { round2 } from '../rules/round.ts';

const MINUS = '\u2212';

/** Signed dioptres with two decimals, as −2.25 and +1.00; zero is 0.00. */
export function dioptres(valueD: number): string {
  const text = Math.abs(valueD).toFixed(2);
  if (Number(text) === 0) return '0.00';
  return (valueD < 0 ? MINUS : '+') + text;
}

/** A length to 0.01 mm, with one decimal at least: 3.5, 31.25, −2.0. No unit. */
export function millimetres(valueMm: number): string {
  const value = round2(valueMm);
  const text = Math.abs(value).toFixed(2).replace(/0$/, '');
  return value < 0 ? MINUS + text : text;
}

/** Amount of prism with two decimals, no sign. */
export const prismAmountText = (amount: number): string => Math.abs(amount).toFixed(2);

/** Axis as three digits, as 005; empty for a sphere. */
export const axisText = ({ cylinderD, axisDeg }: SpheroCylinder): string =>
  Number(cylinderD.toFixed(2)) === 0 ? '' : String(Math.round(axisDeg) % 180 || 180).padStart(3, '0');

/** Sphere, cylinder and axis in minus-cylinder form, as three texts; a sphere has neither cylinder nor axis. */
export function powerCells(power: SpheroCylinder): readonly [string, string, string] {
  const minus = toMinusCylinder(power);
  const axis = axisText(minus);
  return [dioptres(minus.sphereD), axis === '' ? '' : dioptres(minus.cylinderD), axis];
}

/** Base directions of a prism: which part and how much, largest part first; empty for none. */
export function prismParts(eye: Eye, prism: PrismVector): { amount: number; base: PrismBase }[] {
  const { horizontal, vertical } = resolvePrism(eye, prism);
  return [horizontal, vertical].filter(({ amount }) => amount >= 0.005);
}

export type PrismBase = 'in' | 'out' | 'up' | 'down';

/** A place told as the bench does: inwards (below 0 outwards) and up from the boxed centre, mm. */
export const inAndUp = (eye: Eye, { xMm, yMm }: PointMm): { inMm: number; upMm: number } => ({
  inMm: round2(nasalSign(eye) * xMm),
  upMm: round2(yMm),
});
