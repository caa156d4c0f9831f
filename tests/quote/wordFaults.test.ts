import { expect, it } from 'vitest';
import { wordFaults } from '../../src/quote/wordFaults.ts';
import { words } from '../fixtures/bench.ts';

it('finds nothing wrong with the words of the demo shop', () => {
  expect(wordFaults(words)).toEqual([]);
});

it('names a slot that nothing fills, a key that nothing says, and what is missing', () => {
  const { 'price.design': _, ...rest } = words;
  const faults = wordFaults({
    ...rest,
    'price.desing': 'Design',
    'price.frame': 'Frame {modell}',
    'rule.fitting-hight.low': 'Low',
  });
  expect(faults.map(({ key, message }) => `${key}: ${message}`)).toEqual([
    'price.design: This sentence is missing.',
    'price.frame: Nothing fills the slot {modell}.',
    'price.desing: Nothing says this sentence.',
    'rule.fitting-hight.low: Nothing says this sentence.',
  ]);
});
