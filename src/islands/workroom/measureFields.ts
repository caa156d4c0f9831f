/** What there is to enter when a pair is inspected, by what the pair is. Each field has a range in which a lens can be. */
import type { JudgedPair } from '../../quote/judgePair.ts';

export interface MeasureField {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  /** Key of the unit. */
  readonly unit: 'D' | 'degrees' | 'mm' | 'prism';
  /** Key of its label where that is not its name. */
  readonly says?: string;
}

const field = (name: string, least: number, most: number, unit: MeasureField['unit']): MeasureField => ({
  name,
  least,
  most,
  unit,
});

export const AXIS = field('axis', 0, 180, 'degrees');
const POWER = [field('sphere', -40, 40, 'D'), field('cylinder', -15, 15, 'D'), AXIS];
const ADD = field('add', -1, 6, 'D');
const PRISM = [field('across', 0, 25, 'prism'), field('upright', 0, 25, 'prism')];
const FORM = [field('thickness', 0.3, 40, 'mm'), field('curve', -10, 20, 'D'), field('warpage', 0, 10, 'D')];

/** The fields of one lens, by what the pair is. */
export function eyeFields({ situation }: JudgedPair): readonly MeasureField[] {
  const { design, tint } = situation;
  const parted = design.corridor !== null || design.segment !== null;
  return [
    ...POWER,
    ...(parted ? [ADD] : []),
    ...PRISM,
    ...placeFields(design.corridor !== null),
    ...(design.segment === null ? [] : [field('segment', 0, 60, 'mm'), field('tilt', -45, 45, 'degrees')]),
    ...FORM,
    ...(tint?.polarised ? [field('polarising', 0, 180, 'degrees')] : []),
    ...(design.corridor === null ? [] : [field('thinning', 0, 10, 'prism')]),
  ];
}

/** Where the lens sits: a progressive by its fitting cross, any other by its optical centre. */
function placeFields(byCross: boolean): MeasureField[] {
  const [pd, height] = [field('pd', 10, 60, 'mm'), field('height', 0, 80, 'mm')];
  return byCross
    ? [
        { ...pd, says: 'crossPd' },
        { ...height, says: 'crossHeight' },
      ]
    : [pd, height];
}

/** The supplier's verification powers, where it gives any. */
export const verificationFields = ({ situation }: JudgedPair): readonly MeasureField[] =>
  [...POWER, ...(situation.design.corridor === null ? [] : [ADD])].map((one) => ({
    ...one,
    name: `stated-${one.name}`,
  }));

/** Fields of the pair as a whole. */
export const pairFields = ({ situation }: JudgedPair): readonly MeasureField[] =>
  situation.design.segment === null ? [] : [field('separation', 20, 110, 'mm')];
