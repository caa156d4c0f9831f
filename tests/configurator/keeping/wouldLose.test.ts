import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entries } from '../../../src/configurator/fields.ts';
import { packagePart, privatePart, termsPart } from '../../../src/configurator/keeping/parts.ts';
import { wouldLose } from '../../../src/configurator/keeping/wouldLose.ts';
import { anyEntries } from './arbitraries.ts';

const typed = { 'right.sphere': '-3.25', 'pd.right': '31.5', tint: 'grey' };

describe('leaving', () => {
  it.each<[string, Entries, Entries[]]>([
    ['nothing is entered', {}, []],
    ['only choices are made', { tint: 'grey', wearer: 'child', 'pd.mode': 'both', codes: 'SPRING' }, []],
    ['a field was emptied again', { 'right.sphere': ' ' }, []],
    [
      'all that was typed is held, whatever else is',
      typed,
      [{}, { ...typed, tint: 'clear', issued: '2026-01-01' }],
    ],
  ])('loses nothing where %s', (_, entries, held) => {
    expect(wouldLose(entries, held)).toBe(false);
  });

  it.each<[string, Entries, Entries[]]>([
    ['nothing is held', typed, []],
    ['a figure is another than in what is held', typed, [{ ...typed, 'right.sphere': '-3.50' }]],
    [
      'what is held has each figure, but none has all',
      typed,
      [{ 'right.sphere': '-3.25' }, { 'pd.right': '31.5' }],
    ],
    ['a frame of one’s own was measured', { 'own.a': '51' }, []],
  ])('loses something where %s', (_, entries, held) => {
    expect(wouldLose(entries, held)).toBe(true);
  });

  it('loses nothing of entries that are held as a pair, and no package or terms by themselves', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const pair = { ...privatePart(entries), ...packagePart(entries) };
        expect(wouldLose(entries, [pair])).toBe(false);
        expect(wouldLose(termsPart(entries), [])).toBe(false);
      }),
    );
  });
});
