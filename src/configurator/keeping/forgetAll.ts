/** Forgets everything that was ever kept: worksheet, packages set aside, basket, order. */
import { forget } from '../keeping.ts';
import { ASIDE_KEY, BASKET_KEY, ORDER_KEY } from './heldKeys.ts';
import { drop, type Shelves } from './holding.ts';

/** Removes all of it from tab and device; false where the browser refuses to. */
export function forgetAll(shelves: Shelves): boolean {
  const held = [ASIDE_KEY, BASKET_KEY, ORDER_KEY].map((key) => drop(shelves, { key }));
  return forget(shelves.device) && held.every((done) => done);
}
