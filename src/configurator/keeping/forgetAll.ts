/** Forgets everything that was ever kept: worksheet, packages set aside, basket. */
import { BASKET } from '../basket/basket.ts';
import { forget } from '../keeping.ts';
import { drop, type Shelves } from './holding.ts';
import { ASIDE } from './setAside.ts';

/** Removes all of it from tab and device; false where the browser refuses to. */
export function forgetAll(shelves: Shelves): boolean {
  const done = [forget(shelves.device), drop(shelves, ASIDE), drop(shelves, BASKET)];
  return done.every((one) => one);
}
