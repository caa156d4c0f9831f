/** Every entry of the worksheet by name. What is typed is held as text, as it stands. */
import type { Eye } from '../optics/types.ts';

export const EYES = ['right', 'left'] as const satisfies readonly Eye[];

/** The two rows for prism of one eye. */
export const PRISM_ROWS = [1, 2] as const;

const OF_AN_EYE = [
  'sphere',
  'cylinder',
  'axis',
  'add',
  'balance',
  'prism1.amount',
  'prism1.base',
  'prism2.amount',
  'prism2.base',
] as const;

/** Measured for each eye; the first two also as one number. */
export const PAIRED = ['pd', 'nearPd', 'fittingHeight', 'segmentHeight'] as const;
export type Paired = (typeof PAIRED)[number];

const SINGLE = [
  'pd.mode',
  'pd.both',
  'nearPd.both',
  'vertexTested',
  'vertexWorn',
  'tilt',
  'faceForm',
  'issued',
  'wearer',
  'use',
  'size',
  'colourway',
  'design',
  'material',
  'tint',
  'coating',
  'blank',
  'destination',
  'exemption',
  'codes',
  'own.a',
  'own.b',
  'own.dbl',
  'own.ed',
  'own.family',
  'own.mounting',
] as const;

export type Field = (typeof SINGLE)[number] | `${Eye}.${(typeof OF_AN_EYE)[number]}` | `${Paired}.${Eye}`;

export const FIELDS: readonly Field[] = [
  ...SINGLE,
  ...EYES.flatMap((eye) => [
    ...OF_AN_EYE.map((name): Field => `${eye}.${name}`),
    ...PAIRED.map((name): Field => `${name}.${eye}`),
  ]),
];

/** What the visitor typed or chose; an absent field is untouched. */
export type Entries = Readonly<Partial<Record<Field, string>>>;

/** The text of a field without outer spaces. */
export const textOf = (entries: Entries, field: Field): string => (entries[field] ?? '').trim();

/** Whether an entry was measured from the lowest point of one lens. */
export const isHeight = (field: string): boolean => /^(?:fittingHeight|segmentHeight)\./.test(field);

const OF_A_FRAME: readonly string[] = ['size', 'colourway', 'vertexWorn', 'tilt', 'faceForm'];

/** Whether an entry holds for one frame only: measured in it, or a choice of it. */
export const belongsToFrame = (field: Field): boolean =>
  OF_A_FRAME.includes(field) || field.startsWith('own.') || isHeight(field);
