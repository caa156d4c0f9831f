/**
 * A thing under one versioned key, in this tab until it is closed, or on the device where the visitor ticked that.
 * What can no longer be read counts as nothing, and is told, so that the page can say so and drop it.
 */
import { type Shelf, tried } from '../keeping.ts';

/** The two stores of a browser. */
export interface Shelves {
  readonly tab: Shelf;
  readonly device: Shelf;
}

/** A kind of thing that is held. */
export interface Holding<T> {
  readonly key: string;
  /** What a parsed text means; null where it is none of ours. Never throws. */
  readonly read: (json: unknown) => T | null;
}

export interface Held<T> {
  /** null: nothing is held. */
  readonly value: T | null;
  readonly onDevice: boolean;
  /** Something is there that cannot be read. */
  readonly damaged: boolean;
}

/** What is held; the device comes before the tab. */
export function look<T>({ tab, device }: Shelves, holding: Holding<T>): Held<T> {
  const kept = lookOn(device, holding);
  const here = kept.value === null ? lookOn(tab, holding) : kept;
  return {
    value: here.value,
    onDevice: kept.value !== null,
    damaged: kept.damaged || here.damaged,
  };
}

function lookOn<T>(shelf: Shelf, { key, read }: Holding<T>): { value: T | null; damaged: boolean } {
  let text: string | null = null;
  try {
    text = shelf.getItem(key);
    const value = text === null ? null : read(JSON.parse(text));
    return { value, damaged: text !== null && value === null };
  } catch {
    // Storage that is switched off throws; so does text that is no longer ours.
    return { value: null, damaged: text !== null };
  }
}

/** Holds a value in one of the two, and removes it from the other; false where the browser refuses to. */
export function hold<T>(
  { tab, device }: Shelves,
  { key }: Pick<Holding<T>, 'key'>,
  value: T,
  onDevice: boolean,
): boolean {
  const [here, there] = onDevice ? [device, tab] : [tab, device];
  const done = tried(() => here.setItem(key, JSON.stringify(value)));
  return done && tried(() => there.removeItem(key));
}

/** Removes it from both; false where the browser refuses to. */
export function drop({ tab, device }: Shelves, { key }: { readonly key: string }): boolean {
  const done = [tab, device].map((shelf) => tried(() => shelf.removeItem(key)));
  return done.every((one) => one);
}
