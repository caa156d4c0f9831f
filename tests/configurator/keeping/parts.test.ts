import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../../src/configurator/fields.ts';
import {
  groupOf,
  isPrivate,
  isTerms,
  packagePart,
  privatePart,
  termsPart,
} from '../../../src/configurator/keeping/parts.ts';
import { anyEntries } from './arbitraries.ts';

describe('entries', () => {
  it('fall into package, terms and what is private, with nothing left over and nothing twice', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const parts = [packagePart(entries), privatePart(entries), termsPart(entries)];
        expect(Object.assign({}, ...parts)).toEqual(entries);
        const count = parts.reduce((sum, part) => sum + Object.keys(part).length, 0);
        expect(count).toBe(Object.keys(entries).length);
      }),
    );
  });

  it('count as private when they tell of an eye, a face or a person', () => {
    const told = FIELDS.filter((field) =>
      /^(?:right|left)\.|\.(?:right|left)$|^pd|vertex|tilt|wearer/.test(field),
    );
    expect(told.filter((field) => !isPrivate(field))).toEqual([]);
  });

  it('are told of by what they are about', () => {
    expect(
      (['right.sphere', 'issued', 'pd.right', 'tilt', 'wearer', 'tint', 'own.a', 'codes'] as const).map(
        groupOf,
      ),
    ).toEqual(['prescription', 'prescription', 'measures', 'measures', 'wearer', 'tint', 'own', 'terms']);
    expect(FIELDS.filter((field) => groupOf(field) === 'terms')).toEqual(FIELDS.filter(isTerms));
  });
});
