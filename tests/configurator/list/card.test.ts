import { describe, expect, it } from 'vitest';
import { cardOf, sharedCautions } from '../../../src/configurator/list/card.ts';
import type { Finding } from '../../../src/quote/answer.ts';
import { answer } from './list.ts';

const finding = (rule: string, message: string, level: Finding['level'] = 'caution'): Finding => ({
  rule,
  level,
  eye: 'right',
  figures: {},
  message,
  remedy: null,
});
const vertex = finding('vertex-distance', 'The vertex distance is missing.');
const edge = finding('edge-beyond-rim', 'The edge shows.');

describe('what every frame has alike', () => {
  it('is told once above the list and not on a card', () => {
    const answers = new Map([
      ['a', answer('a', { verdict: 'care', findings: [vertex, edge] })],
      ['b', answer('b', { verdict: 'care', findings: [vertex] })],
      ['c', answer('c', { verdict: 'refused', findings: [finding('design-range', 'No.', 'stop')] })],
    ]);
    const shared = sharedCautions(answers);
    expect(shared).toEqual([vertex]);
    const [a, b, c] = [...answers.values()].map((one) => cardOf(one, shared));
    expect(a?.mind).toEqual(['edge-beyond-rim']);
    expect(b).toMatchObject({ mark: 'care', mind: [] });
    expect(c).toMatchObject({ mark: 'refused', reason: 'No.', figures: null });
  });

  it('is nothing where a single frame can be made', () => {
    expect(sharedCautions(new Map([['a', answer('a', { findings: [vertex] })]]))).toEqual([]);
  });
});
