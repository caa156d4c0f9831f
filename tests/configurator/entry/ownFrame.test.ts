import { describe, expect, it } from 'vitest';
import { OWN_FRAME } from '../../../src/configurator/entry/ownFrame.ts';
import { priceOnly } from '../../../src/configurator/entry/waiting.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { openingOf } from '../../../src/configurator/opening.ts';
import { readEntries } from '../../../src/configurator/readEntries.ts';
import { quote } from '../../../src/quote/quote.ts';
import { DATE, shop } from '../shop.ts';

const read = (entries: Entries) => readEntries(entries, { frame: OWN_FRAME, data: shop, date: DATE });

const WHOLE: Entries = {
  'own.a': '51',
  'own.b': '40',
  'own.dbl': '19',
  'own.family': 'square',
  'own.mounting': 'grooved',
  faceForm: '6',
  'right.sphere': '-2.00',
  'left.sphere': '-2.25',
  'pd.right': '31',
  'pd.left': '32',
};

describe('an own frame', () => {
  it('is asked of the engine as measured, for lenses alone', () => {
    const { request, faults, waits } = read(WHOLE);
    expect(faults).toEqual([]);
    expect(waits).toBe(false);
    expect(request.pairs[0]).toMatchObject({
      frame: { a: 51, b: 40, dbl: 19, family: 'square', mounting: 'grooved' },
      fit: { faceForm: 6 },
    });
    expect(request.pairs[0]).not.toHaveProperty('size');
    const reply = quote(shop, request);
    expect(reply.ok && reply.answer.price.lines.some(({ kind }) => kind === 'frame')).toBe(false);
  });

  it('takes materials that its mounting allows', () => {
    const drilled = read({ ...WHOLE, 'own.mounting': 'drilled' }).choices.material;
    expect(shop.materials.find(({ id }) => id === drilled)?.mountings).toContain('drilled');
  });

  it.each([
    ['own.a', '510', '30 to 75'],
    ['own.b', '4', '18 to 65'],
    ['own.dbl', 'wide', 'digits'],
  ] as const)('says at %s what is wrong with %j', (field, text, expected) => {
    const [fault] = read({ ...WHOLE, [field]: text }).faults;
    // Alone too, before the other measurements are there.
    expect(read({ [field]: text }).faults).toContainEqual(fault);
    expect(fault).toMatchObject({ field, missing: false });
    expect(fault?.expected).toContain(expected);
  });

  it('says at the ED which ones its shape reaches', () => {
    const reply = quote(shop, read({ ...WHOLE, 'own.ed': '80' }).request);
    expect(reply).toMatchObject({ ok: false, faults: [{ path: 'pairs.0.frame.ed' }] });
  });
});

describe('while an own frame is not known', () => {
  it('its measurements are asked for, and nothing is judged in another', () => {
    const { 'own.b': _, ...rest } = WHOLE;
    const { waits, faults, request } = read(rest);
    expect(waits).toBe(true);
    expect(faults.map(({ field, missing }) => [field, missing])).toEqual([['own.b', true]]);
    const reply = quote(shop, request);
    if (!reply.ok) throw new Error('This request has an answer.');
    const [pair] = priceOnly(reply.answer).pairs;
    expect([pair?.right, pair?.left, pair?.findings]).toEqual([null, null, []]);
  });

  it('lenses without power are not judged either', () => {
    const reply = quote(shop, read({ use: 'none' }).request);
    if (!reply.ok) throw new Error('This request has an answer.');
    expect(reply.answer.pairs[0]?.right).not.toBeNull();
    expect(priceOnly(reply.answer).pairs[0]?.right).toBeNull();
  });

  it('the page opens with an answer', () => {
    expect(openingOf(shop, OWN_FRAME, DATE).answer.pairs).toHaveLength(1);
  });
});
