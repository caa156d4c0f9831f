/** Reads one eye: power, then add and prism in any order. */
import type { NamedPrism } from '../prismBase.ts';
import { type Result, success } from '../result.ts';
import { type Cursor, faultAt, peek, skip, skipSeparators } from './cursor.ts';
import type { NotationFault } from './fault.ts';
import { readPower } from './readPower.ts';
import { readPrism, startsPrism } from './readPrism.ts';
import type { WrittenEye } from './written.ts';

/** Range of an add that is read as such, D. */
const LEAST_ADD_D = 0.25;
const LARGEST_ADD_D = 6;

/** An eye from the cursor on; stops before what does not belong to it. */
export function readEyeAt(cursor: Cursor): Result<WrittenEye, NotationFault> {
  const power = readPower(cursor);
  if (!power.ok) return power;
  const prisms: NamedPrism[] = [];
  let addD: number | null = null;
  for (;;) {
    const mark = cursor.at;
    skipSeparators(cursor);
    const token = peek(cursor);
    if (startsPrism(cursor)) {
      const prism = readPrism(cursor);
      if (!prism.ok) return prism;
      prisms.push(prism.value);
    } else if (skip(cursor, 'add')) {
      if (addD !== null) return faultAt(cursor, token, 'twice', 'one add an eye');
      const add = readAddAmount(cursor);
      if (!add.ok) return add;
      addD = add.value;
    } else {
      if (token.kind !== 'end') cursor.at = mark;
      return success({ power: power.value, addD, prisms });
    }
  }
}

/** The amount behind the word add; an add is plus whether the sign is written or not. */
export function readAddAmount(cursor: Cursor): Result<number, NotationFault> {
  while (skip(cursor, ':', '='));
  const token = peek(cursor);
  if (token.kind !== 'number' || token.value < LEAST_ADD_D || token.value > LARGEST_ADD_D) {
    const expected = `an add from +${LEAST_ADD_D} to +${LARGEST_ADD_D} D`;
    return faultAt(cursor, token, 'add-range', expected);
  }
  cursor.at++;
  skip(cursor, 'd', 'dpt', 'ds');
  return success(token.value);
}
