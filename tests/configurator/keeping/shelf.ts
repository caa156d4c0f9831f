/** Stores of a browser, in memory. */
import type { Shelves } from '../../../src/configurator/keeping/holding.ts';
import type { Shelf } from '../../../src/configurator/keeping.ts';

/** An empty store, and what is in it. */
function shelf(): Shelf & { readonly stored: Map<string, string> } {
  const stored = new Map<string, string>();
  return {
    stored,
    getItem: (key) => stored.get(key) ?? null,
    setItem: (key, value) => void stored.set(key, value),
    removeItem: (key) => void stored.delete(key),
  };
}

const deny = () => {
  throw new Error('denied');
};

/** A store that is switched off. */
export const refusing: Shelf = { getItem: deny, setItem: deny, removeItem: deny };

/** Both stores, empty. */
export const emptyShelves = () => ({ tab: shelf(), device: shelf() }) satisfies Shelves;
