/** Short names of fields in a link. They are part of what links out there say: changing one takes a new version. */
import { EYES, FIELDS, type Field, PAIRED, type Paired } from '../fields.ts';

const SINGLE: Readonly<Partial<Record<Field, string>>> = {
  size: 'z',
  colourway: 'y',
  use: 'u',
  design: 'd',
  material: 'm',
  tint: 't',
  coating: 'k',
  blank: 'n',
  'own.a': 'p',
  'own.b': 'q',
  'own.dbl': 'r',
  'own.ed': 's',
  'own.family': 'e',
  'own.mounting': 'g',
  wearer: 'w',
  'pd.mode': 'o',
  'pd.both': 'b',
  'nearPd.both': 'h',
  vertexTested: 'x',
  vertexWorn: 'v',
  tilt: 'l',
  faceForm: 'f',
  issued: 'i',
};

const OF_EYE = {
  sphere: 's',
  cylinder: 'c',
  axis: 'a',
  add: 'd',
  balance: 'b',
  'prism1.amount': 'p',
  'prism1.base': 'q',
  'prism2.amount': 'v',
  'prism2.base': 'w',
} as const;

const OF_PAIRED: Readonly<Record<Paired, string>> = {
  pd: 'i',
  nearPd: 'n',
  fittingHeight: 'f',
  segmentHeight: 'g',
};

const SHORT: Readonly<Partial<Record<Field, string>>> = {
  ...SINGLE,
  ...Object.fromEntries(
    EYES.flatMap((eye) => [
      ...Object.entries(OF_EYE).map(([name, short]) => [`${eye}.${name}`, `${eye[0]}${short}`]),
      ...PAIRED.map((name) => [`${name}.${eye}`, `${eye[0]}${OF_PAIRED[name]}`]),
    ]),
  ),
};

/** What a field is called in a link; a field without a short name goes by its own. */
export const keyOf = (field: Field): string => SHORT[field] ?? field;

const BY_KEY = new Map(FIELDS.map((field) => [keyOf(field), field]));

/** The field of a link's key; undefined where there is none. */
export const fieldOfKey = (key: string): Field | undefined => BY_KEY.get(key);
