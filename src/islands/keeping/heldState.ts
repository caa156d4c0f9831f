/** What the parts of a page share about held pairs, without what reads them: most visitors hold none. */
import { atom } from 'nanostores';
import { ASIDE_KEY, BASKET_KEY } from '../../configurator/keeping/heldKeys.ts';
import { isDamaged, tried } from '../../configurator/keeping.ts';
import { shelves } from '../deviceShelf.ts';

/** How many packages are set aside. */
export const asideCount = atom(0);

/** The pair of the basket that the worksheet was opened with; null: none. */
export const openedPair = atom<{ readonly id: number; readonly number: number } | null>(null);

/** Whether anything is held that is to be counted, or to be told of because it cannot be read. */
export function isAnythingHeld(): boolean {
  const { tab, device } = shelves();
  let found = false;
  tried(() => {
    found =
      isDamaged(device) ||
      [tab, device].some((shelf) => [ASIDE_KEY, BASKET_KEY].some((key) => shelf.getItem(key) !== null));
  });
  return found;
}
