/** Reads one eye: power, then add and prism in any order. */
import type { NamedPrism } from '../prismBase.ts';
import { type Result, success } from '../result.ts';
import { type Cursor, faultAt, peek, skipSeparators } from './cursor.ts';
import type { NotationFault } from './fault.ts';
import { addsToBoth, readAdd, startsAdd } from './readAdd.ts';
import { readPower } from './readPower.ts';
import { readPrism, startsPrism } from './readPrism.ts';
import type { WrittenEye } from './written.ts';

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
    } else if (startsAdd(cursor) && !addsToBoth(cursor)) {
      if (addD !== null) return faultAt(cursor, token, 'twice', 'add-once');
      const add = readAdd(cursor);
      if (!add.ok) return add;
      addD = add.value;
    } else {
      if (token.kind !== 'end') cursor.at = mark;
      return success({ power: power.value, addD, prisms });
    }
  }
}
