/** The browser's stores, or ones that refuse where they are switched off: asking for them may throw already. */
import type { Shelves } from '../configurator/keeping/holding.ts';
import type { Shelf } from '../configurator/keeping.ts';

const refuse = () => {
  throw new Error('This browser stores nothing.');
};

const REFUSING: Shelf = { getItem: () => null, setItem: refuse, removeItem: refuse };

/** What lasts on the device. */
export function deviceShelf(): Shelf {
  try {
    return localStorage;
  } catch {
    return REFUSING;
  }
}

function tabShelf(): Shelf {
  try {
    return sessionStorage;
  } catch {
    return REFUSING;
  }
}

/** What lasts as long as this tab, and what lasts on the device. */
export const shelves = (): Shelves => ({ tab: tabShelf(), device: deviceShelf() });
