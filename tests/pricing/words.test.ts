import { expect, test } from 'vitest';
import { PRICE_WORDS } from '../../src/pricing/words.ts';
import { words } from './offer.ts';

test('the words of prices are all there, and no other', () => {
  expect(Object.keys(words).sort()).toEqual(Object.keys(PRICE_WORDS).sort());
});

test.each(Object.entries(PRICE_WORDS))('%s asks for no slot but those it is given', (key, slots) => {
  const asked = [...(words[key] ?? '').matchAll(/\{(\w+)\}/g)].map(([, slot]) => slot);
  expect(slots).toEqual(expect.arrayContaining(asked));
});
