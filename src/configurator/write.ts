/** Figures as the worksheet writes them. */
import type { PowerAnswer } from '../quote/answer.ts';

const MINUS = '\u2212';

/** A power in D as on a prescription: a sign and two decimals, no sign at zero. */
export function writePower(valueD: number): string {
  const text = Math.abs(valueD).toFixed(2);
  if (Number(text) === 0) return text;
  return valueD < 0 ? `${MINUS}${text}` : `+${text}`;
}

/** Sphere, cylinder and axis, such as `−3.25 −0.75 × 170`. */
export function writeLens({ sphere, cylinder, axis }: PowerAnswer): string {
  if (cylinder === 0) return writePower(sphere);
  return `${writePower(sphere)} ${writePower(cylinder)} \u00d7 ${axis}`;
}
