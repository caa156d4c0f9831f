import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { say } from '../../src/catalogue/words.ts';

describe('a sentence of the shop', () => {
  test('has its slots filled with text and numbers', () => {
    const words = { 'rule.blank': 'Needs {neededMm} mm, {name} has {hasMm} mm.' };
    const slots = { neededMm: 71.2, name: 'standard', hasMm: 70 };
    expect(say(words, 'rule.blank', slots)).toBe('Needs 71.2 mm, standard has 70 mm.');
  });

  test('that is missing is an error which names its key', () => {
    expect(() => say({}, 'rule.blank')).toThrow('"rule.blank"');
    expect(() => say({}, 'toString')).toThrow('"toString"');
  });

  test('with a slot that nothing fills is an error which names key and slot', () => {
    expect(() => say({ a: 'Needs {neededMm}' }, 'a', { needed: 1 })).toThrow(/"a" asks for \{neededMm\}/);
    expect(() => say({ a: '{constructor}' }, 'a', {})).toThrow('{constructor}');
  });

  test('law: what fills a slot is shown as it stands, braces and dollars too', () => {
    fc.assert(
      fc.property(fc.string(), (value) => {
        expect(say({ a: '<{slot}>' }, 'a', { slot: value })).toBe(`<${value}>`);
      }),
    );
    expect(say({ a: '{one}' }, 'a', { one: '$& {one} {two}' })).toBe('$& {one} {two}');
  });
});
