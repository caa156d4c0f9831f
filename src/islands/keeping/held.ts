/** Counts the pairs that are held, and removes what cannot be read. */
import { atom } from 'nanostores';
import { BASKET } from '../../configurator/basket/basket.ts';
import type { Entries } from '../../configurator/fields.ts';
import { drop, hold, look } from '../../configurator/keeping/holding.ts';
import { ASIDE } from '../../configurator/keeping/setAside.ts';
import { forget, isDamaged, recall } from '../../configurator/keeping.ts';
import { shelves } from '../deviceShelf.ts';
import { asideCount } from './heldState.ts';

/** Set anew whenever pairs were put in, changed or taken away. */
export const heldChange = atom({});

/** Entries of all that this browser holds: pairs of basket and comparison, and what is kept for a frame. */
export function heldEntries(frame: string, kept: boolean): readonly Entries[] {
  const all = shelves();
  const pairs = [...(look(all, BASKET).value?.pairs ?? []), ...(look(all, ASIDE).value ?? [])];
  const here = kept ? recall(all.device, frame) : null;
  return [...pairs.map(({ entries }) => entries), ...(here === null ? [] : [here])];
}

/** Counts again what is held, and shows the pairs of the basket in the menu. */
export function countHeld(): void {
  heldChange.set({});
  asideCount.set(look(shelves(), ASIDE).value?.length ?? 0);
  const pairs = look(shelves(), BASKET).value?.pairs.length ?? 0;
  for (const link of document.querySelectorAll<HTMLElement>('a[data-count]')) {
    // The plain name is kept beside the one with a count, so that a basket that is emptied has it back.
    link.dataset['plain'] ??= link.textContent ?? '';
    const { plain = '', count = '' } = link.dataset;
    link.textContent = pairs === 0 ? plain : count.replace('{count}', String(pairs));
  }
}

type Thing = 'worksheet' | 'aside' | 'basket';

/** The things of which something is there that can no longer be read. */
export function damagedThings(): readonly Thing[] {
  const all = shelves();
  const damaged: Readonly<Record<Thing, boolean>> = {
    worksheet: isDamaged(all.device),
    aside: look(all, ASIDE).damaged,
    basket: look(all, BASKET).damaged,
  };
  return (['worksheet', 'aside', 'basket'] as const).filter((name) => damaged[name]);
}

/** Removes one thing wherever it is held; false where the browser refuses to. */
export function dropThing(name: Thing): boolean {
  if (name === 'worksheet') return forget(shelves().device);
  return drop(shelves(), name === 'aside' ? ASIDE : BASKET);
}

/** Puts what is set aside where the tick of the worksheet says: it holds the same prescription. */
export function moveAside(onDevice: boolean): void {
  const { value } = look(shelves(), ASIDE);
  if (value !== null) hold(shelves(), ASIDE, value, onDevice);
}
