import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { JOB_STATES } from '../../../src/catalogue/workroom.ts';
import { readBundle, writeBundle } from '../../../src/islands/workroom/bundle.ts';
import { orderBytes } from '../../../src/order/makeOrder.ts';
import { seal } from '../../../src/order/seal.ts';
import { REMAKE_REASONS } from '../../../src/workroom/inHand.ts';
import { mine, numberOf, order, orders } from './benches.ts';

const bytes = await seal(orderBytes(order(1)), [mine.recipient]);
const files = [{ id: numberOf(1), bytes }];
const day = fc.constantFrom('2026-11-25', '2026-12-01', '2027-02-28');
const job = fc.record({
  number: fc.integer({ min: 0, max: 200 }).map(numberOf),
  steps: fc.array(
    fc.record({ state: fc.constantFrom(...JOB_STATES), on: day, by: fc.string({ maxLength: 80 }) }),
    { minLength: 1, maxLength: 6 },
  ),
  remakes: fc.array(
    fc.record({
      on: day,
      reason: fc.constantFrom(...REMAKE_REASONS),
      eye: fc.constantFrom('right' as const, 'left' as const, 'both' as const),
      note: fc.string({ maxLength: 300 }),
    }),
    { maxLength: 3 },
  ),
});
const notes = [{ id: numberOf(1), bytes: await seal(new TextEncoder().encode('{}'), [mine.recipient]) }];
const written = (progress: Parameters<typeof writeBundle>[0]['progress']) =>
  writeBundle({ files, progress, notes }, orders);
const read = (text: string) => readBundle(new Blob([text]), orders);

describe('a saved file', () => {
  it('reads back as it was written', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(job, { maxLength: 4 }), async (progress) => {
        expect(await readBundle(written(progress), orders)).toEqual({ files, progress, notes });
      }),
      { numRuns: 50 },
    );
  });

  it('is not taken when it was cut short anywhere', async () => {
    const text = await written([]).text();
    for (const end of [0, 1, 10, 24, text.length - 2, text.length - 1])
      expect(await read(text.slice(0, end))).toBeNull();
  });

  it.each([
    ['another version', { 'bevelbook-workroom': 2 }, null],
    [
      'a number with a wrong digit',
      null,
      { number: '482109375561', steps: [{ state: 'cut', on: '2026-11-25', by: '' }], remakes: [] },
    ],
    [
      'a day that is none',
      null,
      { number: numberOf(1), steps: [{ state: 'cut', on: '2026-13-25', by: '' }], remakes: [] },
    ],
    [
      'a state that is none',
      null,
      { number: numberOf(1), steps: [{ state: 'lost', on: '2026-11-25', by: '' }], remakes: [] },
    ],
    ['no step', null, { number: numberOf(1), steps: [], remakes: [] }],
    ['a file that is not sealed', null, { id: numberOf(1), sealed: btoa('{"buyer": "Ada"}') }],
    ['a name that leads elsewhere', null, { id: '../evil', sealed: '' }],
    ['a list', null, []],
  ])('is not taken with %s', async (_, first, line) => {
    const lines = [first ?? { 'bevelbook-workroom': 1 }, ...(line === null ? [] : [line])];
    expect(await read(lines.map((one) => `${JSON.stringify(one)}\n`).join(''))).toBeNull();
  });

  it('is not taken whatever else it is', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 200 }), async (any) => {
        expect(await readBundle(new Blob([any]), orders).catch(() => null)).toBeNull();
      }),
      { numRuns: 60 },
    );
  });

  it('hands on no field that is not ours', async () => {
    const extra = {
      number: numberOf(1),
      steps: [{ state: 'cut', on: '2026-11-25', by: '', html: '<b>' }],
      remakes: [],
      more: 1,
    };
    const found = await read(`{"bevelbook-workroom":1}\n${JSON.stringify(extra)}\n`);
    expect(JSON.stringify(found)).not.toMatch(/html|more/);
  });
});
