/** Tables of powers, as prescribed, as ordered and as measured. */

import { prismToPolar } from '../../optics/prismBase.ts';
import type { Eye, PrismVector } from '../../optics/types.ts';
import { dioptres, powerCells, prismAmountText, prismParts } from '../figures.ts';
import type { Part } from '../markup.ts';
import type { LensPower, WorkedLens } from '../workedLens.ts';
import { type Say, table } from './parts.ts';

/** Prism as the bench reads it: `1.00 in, 0.50 up`; a dash for none. */
export function prismText(t: Say, eye: Eye, prism: PrismVector): string {
  const parts = prismParts(eye, prism).map(
    ({ amount, base }) => `${prismAmountText(amount)} ${t(`base.${base}`)}`,
  );
  return parts.length === 0 ? '–' : parts.join(', ');
}

/** All prism that is ground in a lens, by base and, where it lies oblique, by degrees of the front view. */
export function groundText(t: Say, { eye, ground }: Pick<WorkedLens, 'eye' | 'ground'>): string {
  const { amount, baseDeg } = prismToPolar(ground);
  const parts = prismText(t, eye, ground);
  return prismParts(eye, ground).length < 2
    ? parts
    : `${parts} (${amount.toFixed(2)} @ ${Math.round(baseDeg) % 360}°)`;
}

/** One eye's row: label, sphere, cylinder, axis, prism, add. */
export function powerRow(t: Say, label: Part, eye: Eye, { power, prism, addD }: LensPower): Part[] {
  const [sphere, cylinder, axis] = powerCells(power);
  return [
    label,
    sphere,
    cylinder || t('power.sphere'),
    axis || '–',
    prismText(t, eye, prism),
    addD === 0 ? '–' : dioptres(addD),
  ];
}

/** The heads that belong to such rows. */
const powerHeads = (t: Say): string[] => [
  '',
  t('power.sph'),
  t('power.cyl'),
  t('power.axis'),
  t('power.prism'),
  t('power.add'),
];

/** A table of such rows. */
export const powerTable = (t: Say, rows: readonly (readonly Part[])[]) => table(powerHeads(t), rows);

/** Axis of a power with its degree sign; a dash for a sphere. */
export const axisOf = (power: LensPower['power']): string => {
  const [, , axis] = powerCells(power);
  return axis === '' ? '–' : `${axis}°`;
};
