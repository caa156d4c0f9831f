/** The kinds of options, by themselves: a page knows them before it knows anything of the options. */
import type { LensChoice, ReportedChoice } from '../quote/options.ts';

/** The kinds in the order of the sheet. A copy of the engine's list, which would bring the engine with it. */
export const LENS_KINDS = ['design', 'material', 'tint', 'coating'] as const satisfies readonly LensChoice[];

/** The same with the blanks, which follow from the material. */
export const REPORTED_KINDS = [
  'design',
  'material',
  'blank',
  'tint',
  'coating',
] as const satisfies readonly ReportedChoice[];
