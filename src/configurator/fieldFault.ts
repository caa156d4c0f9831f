/** What is wrong with an entry, at the field where it was typed. */
import type { Words } from '../catalogue/catalogue.ts';
import { type Slots, say, writeDigits } from '../catalogue/words.ts';
import type { Fault, FaultTold } from '../quote/fault.ts';
import { FIELDS, type Field } from './fields.ts';

export interface FieldFault {
  /** null: it belongs to no field, and is told beside the verdict. */
  readonly field: Field | null;
  readonly message: string;
  readonly expected: string;
  /** True where nothing stands in the field yet: asked for rather than told off. */
  readonly missing: boolean;
  /** Texts that may have been meant, to be put in when asked for. */
  readonly offers?: readonly string[];
}

const NAMES: Readonly<Record<string, Field>> = {
  'prescription.vertexDistance': 'vertexTested',
  'prescription.issued': 'issued',
  'fit.pd': 'pd.both',
  'fit.nearPd': 'nearPd.both',
  'fit.vertexDistance': 'vertexWorn',
  'fit.pantoscopicTilt': 'tilt',
  'fit.faceForm': 'faceForm',
  taxExemption: 'exemption',
};

/** The field that a path of the request came from; `prismRows` are the rows of one eye in the order they were sent. */
export function fieldOf(
  path: string,
  prismRows: { readonly right: readonly number[]; readonly left: readonly number[] },
): Field | null {
  const plain = path.replace(/^pairs\.0\./, '');
  const prism = /^prescription\.(right|left)\.prism\.(\d+)\.(amount|base)$/.exec(plain);
  const rows = prismRows[(prism?.[1] ?? 'right') as 'right' | 'left'];
  const name =
    prism === null
      ? (NAMES[plain] ?? plain.replace(/^(?:prescription|fit|lenses)\./, '').replace(/^frame\./, 'own.'))
      : `${prism[1]}.prism${rows[Number(prism[2])]}.${prism[3]}`;
  return (FIELDS as readonly string[]).includes(name) ? (name as Field) : null;
}

/** What a fault says in the words of a page: its sentence and what is expected. */
export function tellFault(
  words: Words,
  { message, expected, told }: Pick<Fault, 'message' | 'expected' | 'told'>,
): Pick<FieldFault, 'message' | 'expected'> {
  if (told === undefined) return { message, expected };
  const { code, of, unit, slots, hint } = told;
  const tell = (key: string, more: Slots = {}) => say(words, `worksheet.fault.${key}`, more);
  const filled = {
    ...figures(words, slots),
    ...(of && { of: tell(`of.${of}`) }),
    ...(unit && { unit: tell(`unit.${unit}`) }),
  };
  const wanted = tell(`${code}-expected`, filled);
  return {
    message: tell(code, filled),
    expected: hint
      ? tell('hinted', { expected: wanted, hint: tell(`hint.${hint.code}`, figures(words, hint.slots)) })
      : wanted,
  };
}

/** Figures in the digits of the words, with a true minus. */
const figures = (words: Words, slots: FaultTold['slots']): Slots =>
  Object.fromEntries(
    Object.entries(slots).map(([name, value]) => [
      name,
      writeDigits(words, String(value)).replace('-', '\u2212'),
    ]),
  );

/** A fault of the request as one of a field, in the words of a page. */
export const toFieldFault = (
  words: Words,
  fault: Fault,
  prismRows: Parameters<typeof fieldOf>[1],
): FieldFault => ({
  field: fieldOf(fault.path, prismRows),
  ...tellFault(words, fault),
  missing: fault.found === 'nothing',
});
