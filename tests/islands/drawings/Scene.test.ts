import { describe, expect, it } from 'vitest';
import { linesOf } from '../../../src/islands/drawings/Scene.tsx';

describe('the page of print', () => {
  it('breaks its words into lines that fit, and repeats them until the page is full', () => {
    const lines = linesOf('A page of print that is read through the lens', 6);
    expect(lines).toHaveLength(6);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(34);
    expect(lines[0]).toBe('A page of print that is read');
  });
});
