import { expect, it } from 'vitest';
import { reasonsOf } from '../../src/components/reasons.ts';
import { RULES } from '../../src/rules/rules.ts';
import { words } from '../fixtures/bench.ts';

const reasons = reasonsOf(RULES, words);

it('explains every rule, with at least one sentence that it can say', () => {
  expect(reasons.map(({ id }) => id)).toEqual(RULES.map(({ id }) => id));
  for (const { id, why, sentences } of reasons) {
    expect(why, id).not.toBe('');
    expect(sentences.length, id).toBeGreaterThan(0);
  }
});

it('shows no slot of a sentence', () => {
  expect(reasons.flatMap(({ sentences }) => sentences).filter((sentence) => /[{}]/.test(sentence))).toEqual(
    [],
  );
});
