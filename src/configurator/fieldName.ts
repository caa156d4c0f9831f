/** What a field is called where it stands alone, such as `Left, sphere`. */
import type { Field } from './fields.ts';
import type { Worksheet } from './worksheet.ts';

const EYE_FIELD = /^(right|left)\.(?:(sphere|cylinder|axis|add|balance)|prism([12])\.(amount|base))$/;
const PAIRED_FIELD = /^(pd|nearPd|fittingHeight|segmentHeight)\.(right|left|both)$/;

const KEYS: Readonly<Record<string, string>> = {
  vertexTested: 'prescription.vertexTested',
  issued: 'prescription.issued',
  vertexWorn: 'measures.vertexWorn',
  tilt: 'measures.tilt',
  faceForm: 'measures.faceForm',
  exemption: 'terms.exemption',
  destination: 'terms.destination',
  codes: 'terms.codes',
  'own.a': 'entry.own.a',
  'own.b': 'entry.own.b',
  'own.dbl': 'entry.own.dbl',
  'own.ed': 'entry.own.ed',
  'own.family': 'entry.own.family',
};

/** The name of a field in the shop's words; the field itself where it has none. */
export function fieldName(t: Worksheet['t'], field: Field): string {
  const ofEye = EYE_FIELD.exec(field);
  if (ofEye !== null) {
    const [, eye = '', power, row, part] = ofEye;
    const key = power ?? `${part === 'amount' ? 'prism' : 'base'}${row}`;
    return `${t(eye)}, ${t(`prescription.${key}`)}`;
  }
  const paired = PAIRED_FIELD.exec(field);
  if (paired !== null) {
    const [, name = '', eye = ''] = paired;
    const noun = t(`measures.short.${name}`);
    return eye === 'both' ? noun : `${t(eye)}, ${noun}`;
  }
  const key = KEYS[field];
  return key === undefined ? field : t(key);
}
