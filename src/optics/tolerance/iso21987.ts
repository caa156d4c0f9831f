/** ISO 21987:2017, all of it from memory: every use is marked so until the figures are checked against the text. */
import {
  type Band,
  type CylinderRow,
  type LensTolerances,
  NO_LIMITS,
  type PrismTolerance,
  type ToleranceStandard,
} from './table.ts';

/** Two sets of axis limits are remembered and not resolved: of ISO 21987:2017 and of ISO 8980-1:2004. */
export type IsoAxisSet = '21987:2017' | '8980-1:2004';

const AXIS: Readonly<Record<IsoAxisSet, readonly Band[]>> = {
  '21987:2017': [
    { upTo: 0.125, including: false, limit: null, unit: 'degrees' },
    { upTo: 0.25, limit: 16, unit: 'degrees' },
    { upTo: 0.5, limit: 9, unit: 'degrees' },
    { upTo: 0.75, limit: 6, unit: 'degrees' },
    { upTo: 1.5, limit: 4, unit: 'degrees' },
    { upTo: 2.5, limit: 3, unit: 'degrees' },
    { upTo: Infinity, limit: 2, unit: 'degrees' },
  ],
  '8980-1:2004': [
    { upTo: 0.5, limit: 7, unit: 'degrees' },
    { upTo: 0.75, limit: 5, unit: 'degrees' },
    { upTo: 1.5, limit: 3, unit: 'degrees' },
    { upTo: Infinity, limit: 2, unit: 'degrees' },
  ],
};

const POWER: readonly Band[] = [
  { upTo: 9, limit: 0.12, unit: 'D' },
  { upTo: 12, limit: 0.18, unit: 'D' },
  { upTo: 20, limit: 0.25, unit: 'D' },
  { upTo: Infinity, limit: 0.37, unit: 'D' },
];

const CYLINDER: readonly CylinderRow[] = [
  row(3, [0.09, 0.12, 0.18, 0.25]),
  row(6, [0.12, 0.12, 0.18, 0.25]),
  row(9, [0.12, 0.18, 0.18, 0.25]),
  row(12, [0.12, 0.18, 0.25, 0.25]),
  row(20, [0.18, 0.25, 0.25, 0.25]),
  row(Infinity, [0.25, 0.25, 0.37, 0.37]),
];

function row(strongestUpToD: number, limits: readonly [number, number, number, number]): CylinderRow {
  const edges = [0.75, 4, 6, Infinity] as const;
  return {
    strongestUpToD,
    bands: limits.map((limit, i) => ({ upTo: edges[i] ?? Infinity, limit, unit: 'D' })),
  };
}

function prism(
  limits: readonly [number, number, number],
  strongOverD: number,
  strongMm: number,
): PrismTolerance {
  const edges = [2, 10, Infinity] as const;
  return {
    byOrderedPrism: limits.map((limit, i) => ({ upTo: edges[i] ?? Infinity, limit, unit: 'prism dioptres' })),
    strongOverD,
    strongMm,
    strongOf: 'pair',
  };
}

/** ISO 21987:2017 with one of the two remembered sets of axis limits; no limit is held for progressive lenses. */
export function iso21987(axisSet: IsoAxisSet = '21987:2017'): ToleranceStandard {
  const lens: LensTolerances = {
    ...NO_LIMITS,
    power: { meridians: 'each', bands: POWER },
    cylinder: CYLINDER,
    axis: AXIS[axisSet],
    // Where a lens counts as strong: the power at which the limit in mm overtakes that of small prisms.
    horizontalPrism: prism([0.67, 1, 1.25], 3.25, 2),
    verticalPrism: prism([0.5, 0.75, 1], 5, 1),
  };
  return {
    id: axisSet === '21987:2017' ? 'iso-21987-2017' : 'iso-21987-2017-axis-2004',
    title: `ISO 21987:2017 (axis limits of ISO ${axisSet})`,
    basis: 'from memory',
    note: 'From memory, verify against the text of the standard before relying on it.',
    lenses: { 'single-vision': lens, multifocal: lens, progressive: NO_LIMITS },
  };
}
