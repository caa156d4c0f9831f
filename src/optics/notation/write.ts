/** Writes a prescription in the usual notation; what is written reads back as the same. */
import type { NamedPrism } from '../prismBase.ts';
import type { SpheroCylinder } from '../types.ts';
import type { WrittenEye, WrittenPrescription } from './written.ts';

const BASES = { in: 'BI', out: 'BO', up: 'BU', down: 'BD' } as const;

/** Signed dioptres with two decimals, as -2.25 and +1.00; zero is 0.00. Powers are rounded to 0.01 D. */
export function writeDioptres(powerD: number): string {
  const text = Math.abs(powerD).toFixed(2);
  if (Number(text) === 0) return '0.00';
  return powerD < 0 ? `-${text}` : `+${text}`;
}

/** A power in its own sign of cylinder: `-2.25 -0.75 x 90`, `-2.25 DS`, `plano`. Axis to the whole degree. */
export function writePower({ sphereD, cylinderD, axisDeg }: SpheroCylinder): string {
  const sphere = writeDioptres(sphereD) === '0.00' ? 'plano' : writeDioptres(sphereD);
  const cylinder = writeDioptres(cylinderD);
  if (cylinder === '0.00') return sphere === 'plano' ? sphere : `${sphere} DS`;
  return `${sphere} ${cylinder} x ${Math.round(axisDeg) % 180 || 180}`;
}

/** A prism: `1.50 BI`, or `2.50 @ 37` in degrees. */
export function writePrism({ amount, base }: NamedPrism): string {
  const named = typeof base === 'number' ? `@ ${Number(base.toFixed(1))}` : BASES[base];
  return `${amount.toFixed(2)} ${named}`;
}

/** One eye: `-2.25 -0.75 x 90 add +1.50 1.50 BI 0.50 BU`; a balance lens is `balance`. */
export function writeEye({ power, addD, prisms }: WrittenEye): string {
  const parts = [power === null ? 'balance' : writePower(power)];
  if (addD !== null) parts.push(`add ${writeDioptres(addD)}`);
  parts.push(...prisms.map(writePrism));
  return parts.join(' ');
}

/** Both eyes, a line each, as OD and OS; an eye that is not written has no line. */
export function writePrescription({ right, left }: WrittenPrescription): string {
  const lines = [];
  if (right !== null) lines.push(`OD ${writeEye(right)}`);
  if (left !== null) lines.push(`OS ${writeEye(left)}`);
  return lines.join('\n');
}
