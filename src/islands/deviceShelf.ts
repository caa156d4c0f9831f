/** The browser's store, or one that refuses where it is switched off: asking for it may throw already. */
import type { Shelf } from '../configurator/keeping.ts';

const refuse = () => {
  throw new Error('This browser stores nothing.');
};

export function deviceShelf(): Shelf {
  try {
    return localStorage;
  } catch {
    return { getItem: () => null, setItem: refuse, removeItem: refuse };
  }
}
