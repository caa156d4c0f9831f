import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ORDERS, sorted } from '../../../src/configurator/list/order.ts';
import { VERDICTS } from '../../../src/quote/answer.ts';
import { answer, facts } from './list.ts';

const list = fc.array(
  fc.record({
    name: fc.string({ maxLength: 3 }),
    widthMm: fc.integer({ min: 40, max: 60 }),
    priceMinor: fc.integer({ min: 0, max: 9 }),
    answered: fc.boolean(),
    verdict: fc.constantFrom(...VERDICTS),
    totalMinor: fc.option(fc.integer({ min: 0, max: 9 })),
    thickestMm: fc.option(fc.integer({ min: 1, max: 9 })),
  }),
  { maxLength: 20 },
);

describe('a list in an order', () => {
  it('holds each frame once, and is the same again when sorted again', () => {
    fc.assert(
      fc.property(list, fc.constantFrom(...ORDERS), (frames, order) => {
        const all = frames.map(({ name, widthMm, priceMinor }, i) =>
          facts(`f${i}`, { name, widthsMm: [widthMm], priceMinor }),
        );
        const answers = new Map(
          frames.flatMap(({ answered, verdict, totalMinor, thickestMm }, i) =>
            answered ? [[`f${i}`, answer(`f${i}`, { verdict, totalMinor, thickestMm })] as const] : [],
          ),
        );
        const once = sorted(all, answers, order, 'en');
        expect(once.map(({ id }) => id).sort()).toEqual(all.map(({ id }) => id).sort());
        expect(sorted(once, answers, order, 'en')).toEqual(once);
      }),
    );
  });

  const all = [facts('c', { priceMinor: 1 }), facts('a', { priceMinor: 3 }), facts('b', { priceMinor: 2 })];
  const ids = (order: (typeof ORDERS)[number], answers = new Map()) =>
    sorted(all, answers, order, 'en')
      .map(({ id }) => id)
      .join('');

  it('goes by the price of the frame until pairs are priced, then by that of the pair', () => {
    expect(ids('price')).toBe('cba');
    const answers = new Map([
      ['a', answer('a', { totalMinor: 5 })],
      ['b', answer('b', { totalMinor: 6 })],
    ]);
    expect(ids('price', answers)).toBe('abc');
  });

  it('puts frames that cannot be made behind all that can', () => {
    const answers = new Map([
      ['c', answer('c', { verdict: 'refused', thickestMm: 1 })],
      ['a', answer('a', { thickestMm: 9 })],
      ['b', answer('b', { thickestMm: 4 })],
    ]);
    expect(ids('edge', answers)).toBe('bac');
  });

  it('puts frames for another wearer behind, before those that cannot be made', () => {
    const frames = [
      facts('small', { wearer: 'child' }),
      facts('refused'),
      facts('thick'),
      facts('tiny', { wearer: 'child' }),
    ];
    const answers = new Map([
      ['small', answer('small', { thickestMm: 2 })],
      ['refused', answer('refused', { verdict: 'refused' })],
      ['thick', answer('thick', { thickestMm: 9 })],
      ['tiny', answer('tiny', { thickestMm: 1 })],
    ]);
    const by = (wearer: 'adult' | 'child') =>
      sorted(frames, answers, 'edge', 'en', wearer).map(({ id }) => id);
    expect(by('adult')).toEqual(['thick', 'tiny', 'small', 'refused']);
    expect(by('child')).toEqual(['tiny', 'small', 'thick', 'refused']);
  });

  it('leaves equal frames in the order of the shop', () => {
    expect(ids('width')).toBe('cab');
  });
});
