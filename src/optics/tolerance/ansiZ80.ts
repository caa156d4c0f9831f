/** ANSI Z80.1-2015, from its Quick Reference Guide, items 1 to 5 (seen). The 2020 edition's text was not seen. */
import type { Band, LensTolerances, PrismTolerance, ToleranceStandard } from './table.ts';

const AXIS: readonly Band[] = [
  { upTo: 0.12, including: false, limit: null, unit: 'degrees' },
  { upTo: 0.25, limit: 14, unit: 'degrees' },
  { upTo: 0.5, limit: 7, unit: 'degrees' },
  { upTo: 0.75, limit: 5, unit: 'degrees' },
  { upTo: 1.5, limit: 3, unit: 'degrees' },
  { upTo: Infinity, limit: 2, unit: 'degrees' },
];

const ADD: readonly Band[] = [
  { upTo: 4, limit: 0.12, unit: 'D' },
  { upTo: Infinity, limit: 0.18, unit: 'D' },
];

const VERTICAL: PrismTolerance = {
  byOrderedPrism: [{ upTo: Infinity, limit: 0.33, unit: 'prism dioptres' }],
  strongOverD: 3.375,
  strongMm: 1,
  strongOf: 'pair',
};

const ANY_LENS = {
  'centre-thickness': { limit: 0.3 },
  'base-curve': { limit: 0.75 },
  warpage: { limit: 1 },
  'polarising-axis': { limit: 3, basis: 'from memory' },
} as const;

/** Power in the strongest meridian: a fixed limit up to a power, 2 % beyond. */
const power = (upTo: number, limit: number): LensTolerances['power'] => ({
  meridians: 'strongest',
  bands: [
    { upTo, limit, unit: 'D' },
    { upTo: Infinity, limit: 2, unit: '%' },
  ],
});

/** Cylinder, whatever the power: a limit to 2.00 D, one up to a cylinder beyond, then a share. */
const cylinder = (
  limit: number,
  upTo: number,
  wider: number,
  percent: number,
): LensTolerances['cylinder'] => [
  {
    strongestUpToD: Infinity,
    bands: [
      { upTo: 2, limit, unit: 'D' },
      { upTo, limit: wider, unit: 'D' },
      { upTo: Infinity, limit: percent, unit: '%' },
    ],
  },
];

const SINGLE_VISION: LensTolerances = {
  power: power(6.5, 0.13),
  cylinder: cylinder(0.13, 4.5, 0.15, 4),
  axis: AXIS,
  add: null,
  horizontalPrism: {
    byOrderedPrism: [{ upTo: Infinity, limit: 0.67, unit: 'prism dioptres' }],
    strongOverD: 2.75,
    strongMm: 2.5,
    strongOf: 'pair',
  },
  verticalPrism: VERTICAL,
  placed: ANY_LENS,
};

const MULTIFOCAL: LensTolerances = {
  ...SINGLE_VISION,
  add: ADD,
  placed: {
    ...ANY_LENS,
    'segment-height': { limit: 1 },
    'segment-height-difference': { limit: 1 },
    'segment-separation': { limit: 2.5, basis: 'from memory' },
    'segment-tilt': { limit: 2 },
  },
};

const PROGRESSIVE: LensTolerances = {
  power: power(8, 0.16),
  cylinder: cylinder(0.16, 3.5, 0.18, 5),
  axis: AXIS,
  add: ADD,
  horizontalPrism: {
    byOrderedPrism: [{ upTo: Infinity, limit: 0.67, unit: 'prism dioptres' }],
    // A reprint of the 1999 text has 3.75.
    strongOverD: 3.375,
    strongMm: 1,
    strongOf: 'each',
    basis: 'from memory',
  },
  verticalPrism: VERTICAL,
  placed: {
    ...ANY_LENS,
    'fitting-cross-height': { limit: 1, basis: 'from memory' },
    'fitting-cross-height-difference': { limit: 1, basis: 'from memory' },
    'fitting-cross-horizontal': { limit: 1, basis: 'from memory' },
  },
};

/** ANSI Z80.1-2015: dress eyewear, United States. */
export const ANSI_Z80_1_2015: ToleranceStandard = {
  id: 'ansi-z80.1-2015',
  title: 'ANSI Z80.1-2015',
  basis: 'text seen',
  note: 'Dress eyewear, not safety eyewear. The 2020 edition exists; its text was not seen.',
  lenses: { 'single-vision': SINGLE_VISION, multifocal: MULTIFOCAL, progressive: PROGRESSIVE },
};
