/** New Jersey Administrative Code 13:35-5.2 (seen): much tighter on the axis than the national standard. */
import { type LensTolerances, NO_LIMITS, type ToleranceStandard } from './table.ts';

const ANY_LENS: LensTolerances = {
  ...NO_LIMITS,
  power: {
    meridians: 'sphere',
    bands: [
      { upTo: 6, limit: 0.12, unit: 'D' },
      { upTo: 12, limit: 2, unit: '%' },
      { upTo: Infinity, limit: 0.25, unit: 'D' },
    ],
  },
  cylinder: [{ strongestUpToD: Infinity, bands: [{ upTo: Infinity, limit: 0.12, unit: 'D' }] }],
  // The code names eighths (0.12-0.37, 0.50-1.00, from 1.12); a cylinder between two rows takes the tighter one.
  axis: [
    { upTo: 0.12, including: false, limit: null, unit: 'degrees' },
    { upTo: 0.37, limit: 3, unit: 'degrees' },
    { upTo: 1, limit: 2, unit: 'degrees' },
    { upTo: Infinity, limit: 1, unit: 'degrees' },
  ],
};

/** N.J.A.C. 13:35-5.2: sphere, cylinder and axis; nothing else is limited. */
export const NEW_JERSEY: ToleranceStandard = {
  id: 'njac-13-35-5.2',
  title: 'N.J.A.C. 13:35-5.2',
  basis: 'text seen',
  note: '',
  lenses: { 'single-vision': ANY_LENS, multifocal: ANY_LENS, progressive: ANY_LENS },
};
