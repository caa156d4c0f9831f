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
const SPHERE_WORDS = ['ds', 'd', 'dpt', 'dsph', 'sph', 'sphere', 'sphère', 's'];
const CYLINDER_WORDS = ['dc', 'd', 'dpt', 'dcyl', 'cyl', 'cylinder', 'cylindre', 'c'];
const CYLINDER_UNITS = ['dc', 'dcyl'];
const AXIS_WORDS = ['x', '\u00d7', '*', 'ax', 'axis', 'axe', 'a', 'à'];
const DEGREES = ['\u00b0', 'deg', 'degrees', 'degrés'];

/** A power, or null for a balance lens. */
export function readPower(cursor: Cursor): Result<SpheroCylinder | null, NotationFault> {
  if (skip(cursor, ...BALANCE)) return success(null);
  const sphere = readSphere(cursor);
  if (!sphere.ok) return sphere;
  const mark = cursor.at;
  skipSeparators(cursor);
  const bracketed = skip(cursor, '(');
  const power = startsTurned(cursor, bracketed)
    ? readTurned(cursor, sphere.value)
    : readCylinder(cursor, sphere.value);
  if (!power.ok) return power;
  if (power.value === null) {
    cursor.at = mark;
    return success(normalised({ sphereD: sphere.value, cylinderD: 0, axisDeg: 180 }));
  }
  if (bracketed && !skip(cursor, ')')) return faultAt(cursor, peek(cursor), 'left-over', 'bracket');
  return success(normalised(power.value));
}

/** Cylinder and axis behind a sphere; null where there is no cylinder. */
function readCylinder(cursor: Cursor, sphereD: number): Result<SpheroCylinder | null, NotationFault> {
  const named = skip(cursor, 'cyl', 'cylinder', 'cylindre', 'c');
  if (named) skip(cursor, ':', '=');
  const token = peek(cursor);
  const isCylinder = token.kind === 'number' && !startsPrism(cursor) && !startsTrailingAdd(cursor);
  if (!isCylinder) {
    const isAxis = token.kind !== 'number' && AXIS_WORDS.includes(token.text);
    return named || isAxis ? faultAt(cursor, token, 'no-power', 'cylinder') : success(null);
  }
  const cylinder = signedPower(cursor, token, LARGEST_CYLINDER_D, 'cylinder');
  if (!cylinder.ok) return cylinder;
  skip(cursor, ...CYLINDER_WORDS);
  const axis = readAxis(cursor, cylinder.value === 0);
  if (!axis.ok) return axis;
  return success({ sphereD, cylinderD: cylinder.value, axisDeg: axis.value });
}

/** Whether the axis stands before its cylinder, as is usual in French: `(170° -0.75)`, bare only with its degrees. */
function startsTurned(cursor: Cursor, bracketed: boolean): boolean {
  const axis = peek(cursor);
  if (axis.kind !== 'number' || axis.signed) return false;
  const hasDegrees = DEGREES.includes(peek(cursor, 1).text);
  const cylinder = peek(cursor, hasDegrees ? 2 : 1);
  return (hasDegrees || bracketed) && cylinder.kind === 'number' && cylinder.signed;
}

function readTurned(cursor: Cursor, sphereD: number): Result<SpheroCylinder, NotationFault> {
  const axis = peek(cursor);
  if (axis.value > 180) return faultAt(cursor, axis, 'axis-range', 'axis-range');
  cursor.at++;
  skip(cursor, ...DEGREES);
  const cylinder = signedPower(cursor, peek(cursor), LARGEST_CYLINDER_D, 'cylinder');
  if (!cylinder.ok) return cylinder;
  skip(cursor, ...CYLINDER_WORDS);
  return success({ sphereD, cylinderD: cylinder.value, axisDeg: axis.value });
}

function readSphere(cursor: Cursor): Result<number, NotationFault> {
  if (skip(cursor, 'sph', 'sphere', 'sphère', 's')) skip(cursor, ':', '=');
  const token = peek(cursor);
  if (skip(cursor, ...PLANO)) {
    skip(cursor, ...SPHERE_WORDS);
    return success(0);
  }
  if (token.kind !== 'number' || startsPrism(cursor)) {
    return faultAt(cursor, token, 'no-power', 'sphere');
  }
  // Dioptres of cylinder: whether the sphere was left out or the unit is wrong cannot be told.
  if (CYLINDER_UNITS.includes(peek(cursor, 1).text)) {
    return faultAt(cursor, { ...token, end: peek(cursor, 1).end }, 'no-power', 'sphere-first');
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
  name: 'sphere' | 'cylinder',
): Result<number, NotationFault> {
  if (!token.signed && token.value !== 0) {
    return faultAt(cursor, token, 'no-sign', `${name}-sign`);
  }
  if (Math.abs(token.value) > largest) {
    return faultAt(cursor, token, 'power-range', `${name}-range`, { most: largest });
  }
  cursor.at++;
  return success(token.value);
}

function readAxis(cursor: Cursor, optional: boolean): Result<number, NotationFault> {
  const start = cursor.at;
  while (skip(cursor, '/', ',', '|'));
  const bracketed = skip(cursor, '(');
  const named = skip(cursor, ...AXIS_WORDS);
  if (named) skip(cursor, ':', '=');
  const token = peek(cursor);
  if (token.kind !== 'number' || token.signed || (!named && startsPrism(cursor))) {
    if (optional && !named) {
      cursor.at = start;
      return success(180);
    }
    return faultAt(cursor, token, 'no-axis', 'axis');
  }
  if (token.value > 180) return faultAt(cursor, token, 'axis-range', 'axis-range');
  cursor.at++;
  skip(cursor, ...DEGREES);
  if (bracketed && !skip(cursor, ')')) return faultAt(cursor, peek(cursor), 'left-over', 'bracket');
  return success(token.value);
}
