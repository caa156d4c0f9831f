/** Powers written so that they read back as the same number. */
import { writePower } from '../write.ts';

const MINUS = '\u2212';

/** A power in D with its sign and two decimals, or as many as it takes up to four: eighths keep their third. */
export function exactPower(valueD: number): string {
  // Sums of decimals are off by a hair.
  const plainD = Number(valueD.toFixed(4));
  const digits = [2, 3, 4].find((count) => Number(plainD.toFixed(count)) === plainD) ?? 4;
  if (digits === 2) return writePower(plainD);
  return `${plainD < 0 ? MINUS : '+'}${Math.abs(plainD).toFixed(digits)}`;
}
