/** Whether the shop's words hold what rules and prices say: keys that lack or that nothing asks for, and slots. */
import type { Words } from '../catalogue/catalogue.ts';
import { PRICE_WORDS } from '../pricing/words.ts';
import { RULES } from '../rules/rules.ts';

/** One sentence with something wrong. */
export interface WordFault {
  /** Key in the words files, dots for levels. */
  readonly key: string;
  readonly message: string;
  readonly expected: string;
}

const PRICES: Readonly<Record<string, readonly string[]>> = PRICE_WORDS;

/** Every fault of the words of prices and rules; a rule's own messages are free, its title and reason are not. */
export function wordFaults(words: Words): readonly WordFault[] {
  const ruleKeys = RULES.flatMap(({ id }) => [`rule.${id}.title`, `rule.${id}.why`]);
  const missing = [...Object.keys(PRICES), ...ruleKeys]
    .filter((key) => !Object.hasOwn(words, key))
    .map((key) => ({ key, message: 'This sentence is missing.', expected: slotsText(PRICES[key] ?? []) }));
  return [...missing, ...Object.entries(words).flatMap(([key, text]) => oneFault(key, text))];
}

function oneFault(key: string, text: string): WordFault[] {
  if (key.startsWith('price.')) {
    const slots = PRICES[key];
    if (slots === undefined) return [unknown(key, `one of ${Object.keys(PRICES).join(', ')}`)];
    const strange = slotsOf(text).filter((slot) => !slots.includes(slot));
    return strange.map((slot) => ({
      key,
      message: `Nothing fills the slot {${slot}}.`,
      expected: slotsText(slots),
    }));
  }
  const id = /^rule\.([^.]+)\./.exec(key)?.[1];
  if (id === undefined || RULES.some((rule) => rule.id === id)) return [];
  return [unknown(key, `a rule of ${RULES.map((rule) => rule.id).join(', ')}`)];
}

const unknown = (key: string, expected: string): WordFault => ({
  key,
  message: 'Nothing says this sentence.',
  expected,
});

const slotsOf = (text: string) => [...text.matchAll(/\{([A-Za-z]\w*)\}/g)].map(([, slot = '']) => slot);

const slotsText = (slots: readonly string[]) =>
  slots.length === 0
    ? 'a sentence without slots'
    : `a sentence with none but ${slots.map((slot) => `{${slot}}`).join(', ')}`;
