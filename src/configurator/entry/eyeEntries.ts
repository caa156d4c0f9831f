/** One eye as written in a text becomes the entries of its line on the form. */
import type { WrittenEye } from '../../optics/notation/written.ts';
import { addPrisms } from '../../optics/prism.ts';
import { prismFromBase, resolvePrism } from '../../optics/prismBase.ts';
import type { Eye } from '../../optics/types.ts';
import type { Entries } from '../fields.ts';
import { exactPower } from './exactPower.ts';

/** A row of prism on the form. */
interface Row {
  readonly amount: number;
  readonly base: string;
}

const NO_ROW = { amount: '', base: '' };

/** All entries of the line of an eye; an empty text where the prescription has nothing. */
export function eyeEntries(eye: Eye, written: WrittenEye): Entries {
  const { power, addD } = written;
  const hasCylinder = power !== null && power.cylinderD !== 0;
  const [first, second] = prismRows(eye, written).map(({ amount, base }) => ({
    amount: String(amount),
    base,
  }));
  return {
    [`${eye}.sphere`]: power === null ? '' : exactPower(power.sphereD),
    [`${eye}.cylinder`]: hasCylinder ? exactPower(power.cylinderD) : '',
    [`${eye}.axis`]: hasCylinder ? String(power.axisDeg) : '',
    [`${eye}.add`]: addD === null ? '' : exactPower(addD),
    [`${eye}.balance`]: power === null ? 'yes' : '',
    [`${eye}.prism1.amount`]: (first ?? NO_ROW).amount,
    [`${eye}.prism1.base`]: (first ?? NO_ROW).base,
    [`${eye}.prism2.amount`]: (second ?? NO_ROW).amount,
    [`${eye}.prism2.base`]: (second ?? NO_ROW).base,
  };
}

/** Prisms by name as they are written; those in degrees, or more than the form has rows for, as two components. */
function prismRows(eye: Eye, { prisms }: WrittenEye): readonly Row[] {
  const named = prisms.flatMap(({ amount, base }) => (typeof base === 'number' ? [] : [{ amount, base }]));
  if (named.length === prisms.length && named.length <= 2) return named.filter(({ amount }) => amount > 0);
  const sum = addPrisms(...prisms.map((prism) => prismFromBase(eye, prism)));
  const { horizontal, vertical } = resolvePrism(eye, sum);
  return [horizontal, vertical]
    .map(({ amount, base }) => ({ amount: Number(amount.toFixed(2)), base }))
    .filter(({ amount }) => amount > 0);
}
