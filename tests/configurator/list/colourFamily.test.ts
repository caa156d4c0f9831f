import { expect, it } from 'vitest';
import { colourFamily } from '../../../src/configurator/list/colourFamily.ts';

// Names as a shopper would call them (common practice).
it.each([
  ['#191919', 'black'],
  ['#ffffff', 'white'],
  ['#eae4d6', 'white'],
  ['#8c8f92', 'grey'],
  ['#6b3418', 'brown'],
  ['#5b3a1e', 'brown'],
  ['#a5894a', 'gold'],
  ['#c01818', 'red'],
  ['#e7a9b8', 'pink'],
  ['#2f4a40', 'green'],
  ['#25324a', 'blue'],
  ['#4a2337', 'purple'],
  ['#5a2f8a', 'purple'],
])('%s is called %s', (colour, family) => {
  expect(colourFamily(colour)).toBe(family);
});
