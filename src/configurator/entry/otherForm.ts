/** The prescription as entered, written with the other sign of cylinder: the same lenses. */
import { transpose } from '../../optics/prescription.ts';
import type { Eye, SpheroCylinder } from '../../optics/types.ts';
import { type Entries, EYES, type Field, textOf } from '../fields.ts';
import { readNumber } from '../readNumber.ts';
import { exactPower } from './exactPower.ts';

export interface OtherForm {
  /** The sign of cylinder that is written now; null where no cylinder can be turned. */
  readonly to: 'plus' | 'minus' | null;
  /** Sphere, cylinder and axis of the eyes that were turned. */
  readonly entries: Entries;
  /** Eyes with a cylinder whose power cannot be read yet: they stay as they are. */
  readonly unread: readonly Eye[];
}

/**
 * Both eyes with plus cylinders where any eye has a minus one, else with minus cylinders. An eye that is written
 * so already, or has no cylinder, stays as it is.
 */
export function otherForm(entries: Entries): OtherForm {
  const eyes = EYES.map((eye) => ({ eye, power: readPower(entries, eye) }));
  const unread = eyes.filter(({ power }) => power === 'unread').map(({ eye }) => eye);
  const read = eyes.flatMap(({ eye, power }) =>
    power === null || power === 'unread' ? [] : [{ eye, power }],
  );
  const to = read.length === 0 ? null : read.some(({ power }) => power.cylinderD < 0) ? 'plus' : 'minus';
  const turned = read.filter(({ power }) => power.cylinderD < 0 === (to === 'plus'));
  return { to, unread, entries: Object.assign({}, ...turned.map(({ eye, power }) => written(eye, power))) };
}

/** The fields that a form of writing is about. */
export const FORM_FIELDS: readonly Field[] = EYES.flatMap((eye): Field[] => [
  `${eye}.sphere`,
  `${eye}.cylinder`,
  `${eye}.axis`,
]);

function written(eye: Eye, power: SpheroCylinder): Entries {
  const other = transpose(power);
  return {
    [`${eye}.sphere`]: exactPower(other.sphereD),
    [`${eye}.cylinder`]: exactPower(other.cylinderD),
    [`${eye}.axis`]: String(other.axisDeg),
  };
}

/** The power of an eye with a cylinder; null without one. */
function readPower(entries: Entries, eye: Eye): SpheroCylinder | 'unread' | null {
  const cylinder = readNumber(textOf(entries, `${eye}.cylinder`));
  if (cylinder.kind === 'blank' || (cylinder.kind === 'number' && cylinder.value === 0)) return null;
  const sphere = readNumber(textOf(entries, `${eye}.sphere`));
  const axis = readNumber(textOf(entries, `${eye}.axis`));
  const all = [sphere, cylinder, axis];
  if (!all.every((one) => one.kind === 'number')) return 'unread';
  const [sphereD, cylinderD, axisDeg] = all.map((one) => (one.kind === 'number' ? one.value : 0));
  if (sphereD === undefined || cylinderD === undefined || axisDeg === undefined) return 'unread';
  const unsigned = [sphere, cylinder].some((one) => one.kind === 'number' && !one.signed && one.value !== 0);
  const isAxis = Number.isInteger(axisDeg) && axisDeg >= 0 && axisDeg <= 180;
  return unsigned || !isAxis ? 'unread' : { sphereD, cylinderD, axisDeg };
}
