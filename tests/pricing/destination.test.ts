import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { entriesFor, placeOf, placesNamed } from '../../src/pricing/destination.ts';

const entry = (...destinations: string[]) => ({ destinations });

describe('a destination', () => {
  test.each([
    ['US-ME', 'US-ME'],
    [' us-me ', 'US-ME'],
    ['GB', 'GB'],
    ['FR-971', 'FR-971'],
  ])('%j is %s', (asked, place) => {
    expect(placeOf(asked)).toBe(place);
  });

  test.each(['', 'USA', 'Maine', '*', 'US-', 'US-MAIN', 'US ME'])('%j is none', (asked) => {
    expect(placeOf(asked)).toBeNull();
  });
});

describe('the entries for a place', () => {
  const maine = entry('US-ME');
  const states = entry('US', 'CA');
  const abroad = entry('*');
  const all = [abroad, states, maine];

  test.each([
    ['US-ME', [maine]],
    ['US-NH', [states]],
    ['US', [states]],
    ['CA-QC', [states]],
    ['DE', [abroad]],
  ])('for %s the longest name speaks', (place, expected) => {
    expect(entriesFor(all, place)).toEqual(expected);
  });

  test('are none where nothing names it', () => {
    expect(entriesFor([maine, states], 'DE')).toEqual([]);
    expect(entriesFor([maine], 'US')).toEqual([]);
    expect(entriesFor([entry('US-M')], 'US-ME')).toEqual([]);
  });

  test('are all that name it equally closely, such as a federal and a provincial rate', () => {
    const federal = entry('CA', 'CA-QC');
    const provincial = entry('CA-QC');
    expect(entriesFor([federal, provincial, abroad], 'CA-QC')).toEqual([federal, provincial]);
  });

  test('law: an entry for anywhere changes nothing where another fits', () => {
    const name = fc.constantFrom('US', 'US-ME', 'US-NH', 'CA', 'DE');
    const entries = fc.array(fc.record({ destinations: fc.array(name, { minLength: 1, maxLength: 3 }) }));
    fc.assert(
      fc.property(entries, name, (list, place) => {
        const found = entriesFor(list, place);
        expect(entriesFor([abroad, ...list], place)).toEqual(found.length > 0 ? found : [abroad]);
      }),
    );
  });
});

test('every place that is named is told once', () => {
  expect(placesNamed([entry('US', 'CA'), entry('CA', '*')])).toBe('US, CA, *');
  expect(placesNamed([])).toBe('-');
});
