import { describe, expect, it } from 'vitest';
import { asWritten, readRequest } from '../../src/quote/requestSchema.ts';
import { changed, offer } from '../fixtures/bench.ts';

const today = '2026-11-25';
const pair = changed({});

/** The faults of a request, a line each. */
function faultsOf(json: unknown): string[] {
  const read = readRequest(json, today);
  return read.ok
    ? []
    : read.faults.map(
        ({ path, message, expected, found }) => `${path}: ${message} Expected ${expected}; found ${found}.`,
      );
}

describe('a request', () => {
  it('is read as it stands', () => {
    expect(readRequest({ date: '2026-12-01', pairs: [pair] }, today)).toEqual({
      ok: true,
      request: { date: '2026-12-01', pairs: [pair] },
    });
  });

  it('may be a bare package, with the order beside it and today for its date', () => {
    expect(readRequest({ ...pair, codes: ['HELLO'] }, today)).toEqual({
      ok: true,
      request: { date: today, codes: ['HELLO'], pairs: [pair] },
    });
  });

  it('takes null as deliberately none', () => {
    const right = { sphere: -2, cylinder: null, axis: null, add: null, prism: null };
    const prescription = { right, left: { sphere: -2 }, vertexDistance: null, issued: null };
    expect(faultsOf({ ...pair, prescription })).toEqual([]);
    expect(faultsOf({ ...pair, prescription: null })).toEqual([]);
  });

  it.each([
    [
      'nothing',
      null,
      ['(whole request): This value is not of the kind that is needed here. Expected an object; found null.'],
    ],
    [
      'a list',
      [],
      ['(whole request): This value is not of the kind that is needed here. Expected an object; found [].'],
    ],
    [
      'no pairs',
      { pairs: [] },
      ['pairs: This value is not of the kind that is needed here. Expected at least 1; found [].'],
    ],
    [
      'a key that is not known',
      { ...pair, colour: 'ink' },
      [
        'colour: This key is not known here. Expected only frame, size, colourway, wearer, prescription, fit, lenses (did you mean "colourway"?); found colour.',
      ],
    ],
    [
      'a key that is not known further in',
      { ...pair, fit: { pd: { right: 31, lft: 31 } } },
      [
        'fit.pd.lft: This key is not known here. Expected only right, left (did you mean "left"?); found lft.',
      ],
    ],
    [
      'a number written as text',
      { ...pair, fit: { pd: '62' } },
      [
        'fit.pd: This value is not of the kind that is needed here. Expected a number, or an object; found "62".',
      ],
    ],
    [
      'a use that is not known',
      { ...pair, lenses: { ...pair.lenses, use: 'reading' } },
      [
        'lenses.use: This value is not of the kind that is needed here. Expected distance, intermediate, near, all, none; found "reading".',
      ],
    ],
    [
      'a day that is not in the calendar',
      { ...pair, date: '2026-02-30' },
      [
        'date: This value is not of the kind that is needed here. Expected a civil date such as 2026-11-25; found "2026-02-30".',
      ],
    ],
    [
      'a frame without its bridge',
      { ...pair, frame: { a: 50, b: 40, mounting: 'full' } },
      ['frame.dbl: A value is missing. Expected a number; found nothing.'],
    ],
    [
      'a missing design',
      { ...pair, lenses: { use: 'distance', material: 'tough', tint: null, coating: null } },
      ['lenses.design: A value is missing. Expected a string; found nothing.'],
    ],
  ])('with %s has exact faults', (_, json, faults) => {
    expect(faultsOf(json)).toEqual(faults);
  });

  it('names places from the package when it was a bare one', () => {
    const faults = [{ path: 'pairs.0.fit.pd', message: '', expected: '', found: '' }];
    expect(asWritten(pair, faults)[0]?.path).toBe('fit.pd');
    expect(asWritten({ pairs: [pair] }, faults)[0]?.path).toBe('pairs.0.fit.pd');
  });

  it('of a wrong shape is told of ranges and names in the same go', () => {
    const json = {
      ...pair,
      size: '60-11',
      prescription: { right: { sphere: -325, cylindr: -0.5 }, left: { sphere: 45 } },
      fit: { pd: 6.3 },
      lenses: { ...pair.lenses, material: 'tuff' },
      wearer: 'childs',
    };
    const read = readRequest(json, today, offer);
    expect(
      read.ok ? [] : read.faults.map(({ path, expected, found }) => `${path}: ${expected} / ${found}`).sort(),
    ).toMatchInlineSnapshot(`
      [
        "fit.pd: 40 to 85 mm (did you mean 63?) / 6.3",
        "lenses.material: bench-plastic, tough, thin / tuff",
        "prescription.left.sphere: -30 to 30 D / 45",
        "prescription.right.cylindr: only sphere, cylinder, axis, add, prism, balance (did you mean "cylinder"?) / cylindr",
        "size: 60-10, 65-5, 50-20, 38-24 (did you mean "60-10"?) / 60-11",
        "wearer: adult, child, one-eyed (did you mean "child"?) / "childs"",
      ]
    `);
  });
});
