/** What is wrong with an entry, at the field where it was typed. */
import type { Fault } from '../quote/fault.ts';
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
  'frame.a': 'own.a',
  'frame.b': 'own.b',
  'frame.dbl': 'own.dbl',
  'frame.ed': 'own.ed',
  'frame.family': 'own.family',
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
      ? (NAMES[plain] ?? plain.replace(/^(?:prescription|fit|lenses)\./, ''))
      : `${prism[1]}.prism${rows[Number(prism[2])]}.${prism[3]}`;
  return (FIELDS as readonly string[]).includes(name) ? (name as Field) : null;
}

/** A fault of the request as one of a field. */
export const toFieldFault = (
  { path, message, expected, found }: Fault,
  prismRows: Parameters<typeof fieldOf>[1],
): FieldFault => ({ field: fieldOf(path, prismRows), message, expected, missing: found === 'nothing' });
