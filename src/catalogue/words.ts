/** Sentences of the shop: a key and its slots become text. */
import type { Words } from './catalogue.ts';

/** What the slots of a sentence are filled with; numbers are rounded already and keep their digits. */
export type Slots = Readonly<Record<string, number | string>>;

/** A text whose numbers are written with a point, with the decimal sign of the words instead. */
export function writeDigits(words: Words, text: string): string {
  const sign = words['number.decimal'] ?? '.';
  return sign === '.' ? text : text.replace(/(\d)\.(?=\d)/g, `$1${sign}`);
}

/**
 * The text of `key` with each `{slot}` filled from `slots`.
 *
 * Throws an Error that names the key when there is no such text, and the slot when nothing fills it: the reader
 * checks both when the shop is built, so that no page can show a hole.
 */
export function say(words: Words, key: string, slots: Slots = {}): string {
  const text = Object.hasOwn(words, key) ? words[key] : undefined;
  if (text === undefined) throw new Error(`No text for "${key}": add it to the words folder of the shop.`);
  // Most texts have no slot, and a page says hundreds of them.
  if (!text.includes('{')) return text;
  return text.replace(/\{([A-Za-z][A-Za-z0-9]*)\}/g, (_, slot: string) => {
    const value = Object.hasOwn(slots, slot) ? slots[slot] : undefined;
    if (value === undefined) throw new Error(`The text for "${key}" asks for {${slot}}, which is not given.`);
    return typeof value === 'number' ? writeDigits(words, String(value)) : value;
  });
}
