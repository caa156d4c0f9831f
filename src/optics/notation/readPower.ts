/** Reads sphere, cylinder and axis, in either sign of cylinder. */
import { normalised } from '../prescription.ts';
import { type Result, success } from '../result.ts';
import type { SpheroCylinder } from '../types.ts';
import { type Cursor, faultAt, peek, skip, skipSeparators } from './cursor.ts';
import type { NotationFault } from './fault.ts';
import { startsTrailingAdd } from './readAdd.ts';
import { startsPrism } from './readPrism.ts';
import type { Token } from './tokens.ts';

/** Largest sphere and cylinder that are read as such, D: beyond them a decimal point is missing. */
const LARGEST_SPHERE_D = 40;
const LARGEST_CYLINDER_D = 15;

/** The last is the sign of infinity: a lens without power has its focus there. */
const PLANO = ['plano', 'plan', 'pl', 'plo', '\u221e'];
const BALANCE = ['balance', 'bal'];
const SPHERE_WORDS = ['ds', 'd', 'dpt', 'dsph', 'sph', 'sphere', 's'];
const CYLINDER_WORDS = ['dc', 'd', 'dpt', 'dcyl', 'cyl', 'cylinder', 'c'];
const AXIS_WORDS = ['x', '\u00d7', '*', 'ax', 'axis', 'a'];

/** A power, or null for a balance lens. */
export function readPower(cursor: Cursor): Result<SpheroCylinder | null, NotationFault> {
  if (skip(cursor, ...BALANCE)) return success(null);
  const sphere = readSphere(cursor);
  if (!sphere.ok) return sphere;
  const mark = cursor.at;
  skipSeparators(cursor);
  const named = skip(cursor, 'cyl', 'cylinder', 'c');
  if (named) skip(cursor, ':', '=');
  const token = peek(cursor);
  const isCylinder = token.kind === 'number' && !startsPrism(cursor) && !startsTrailingAdd(cursor);
  if (!isCylinder) {
    const isAxis = token.kind !== 'number' && AXIS_WORDS.includes(token.text);
    if (named || isAxis) return faultAt(cursor, token, 'no-power', 'a signed cylinder such as -0.75');
    cursor.at = mark;
    return success(normalised({ sphereD: sphere.value, cylinderD: 0, axisDeg: 180 }));
  }
  const cylinder = signedPower(cursor, token, LARGEST_CYLINDER_D, 'cylinder');
  if (!cylinder.ok) return cylinder;
  skip(cursor, ...CYLINDER_WORDS);
  const axis = readAxis(cursor, cylinder.value === 0);
  if (!axis.ok) return axis;
  return success(normalised({ sphereD: sphere.value, cylinderD: cylinder.value, axisDeg: axis.value }));
}

function readSphere(cursor: Cursor): Result<number, NotationFault> {
  if (skip(cursor, 'sph', 'sphere', 's')) skip(cursor, ':', '=');
  const token = peek(cursor);
  if (skip(cursor, ...PLANO)) {
    skip(cursor, ...SPHERE_WORDS);
    return success(0);
  }
  if (token.kind !== 'number' || startsPrism(cursor)) {
    return faultAt(cursor, token, 'no-power', 'a sphere such as -2.25, +1.00, 0.00 or plano');
  }
  const sphere = signedPower(cursor, token, LARGEST_SPHERE_D, 'sphere');
  if (sphere.ok) skip(cursor, ...SPHERE_WORDS);
  return sphere;
}

/** A power needs its sign unless it is zero: a lost sign is the costliest error of all. */
function signedPower(
  cursor: Cursor,
  token: Token,
  largest: number,
  name: string,
): Result<number, NotationFault> {
  if (!token.signed && token.value !== 0) {
    return faultAt(cursor, token, 'no-sign', `+ or - before the ${name}`);
  }
  if (Math.abs(token.value) > largest) {
    return faultAt(
      cursor,
      token,
      'power-range',
      `a ${name} from -${largest} to +${largest} D, with its decimal point`,
    );
  }
  cursor.at++;
  return success(token.value);
}

function readAxis(cursor: Cursor, optional: boolean): Result<number, NotationFault> {
  const start = cursor.at;
  while (skip(cursor, '/', ',', '|'));
  const named = skip(cursor, ...AXIS_WORDS);
  if (named) skip(cursor, ':', '=');
  const token = peek(cursor);
  if (token.kind !== 'number' || token.signed || (!named && startsPrism(cursor))) {
    if (optional && !named) {
      cursor.at = start;
      return success(180);
    }
    return faultAt(cursor, token, 'no-axis', 'an axis such as x 90');
  }
  if (token.value > 180) return faultAt(cursor, token, 'axis-range', 'an axis from 1 to 180 degrees');
  cursor.at++;
  skip(cursor, '\u00b0', 'deg', 'degrees');
  return success(token.value);
}
