import { describe, expect, it } from 'vitest';
import { teller } from '../../../src/islands/drawings/tell.ts';
import { t, tell } from './drawn.ts';

describe('the figures of a drawing', () => {
  it('have their unit behind a space that does not break, and a true minus', () => {
    expect(tell.mm(3.456)).toBe('3.46\u00a0mm');
    expect(tell.number(-1.5, 1)).toBe('\u22121.5');
    expect(tell.deg(26.9, 1)).toBe('26.9°');
  });

  it('are written as the language writes them', () => {
    expect(teller(t, 'de').mm(3.456)).toBe('3,46\u00a0mm');
  });

  it('name a place by the nose and temple of its own eye', () => {
    expect([tell.place('right', 0), tell.place('left', 0)]).toEqual(['nose side', 'temple side']);
  });
});
