import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '../../../src/catalogue/dayBounds.ts';
import type { Promotion } from '../../../src/catalogue/promotion.ts';
import { calendarOf, turningDays } from '../../../src/commands/prices/calendar.ts';

const FIRST = '2026-03-01';
const DAYS = Array.from({ length: 40 }, (_, n) => addDays(FIRST, n));

const day = fc.nat({ max: 30 }).map((n) => addDays(FIRST, n));
const dates = fc
  .tuple(fc.option(day), fc.option(day))
  .map(([a, b]) => (a !== null && b !== null && a > b ? [b, a] : [a, b]) as [string | null, string | null]);
const joins = fc.oneof(
  fc.constantFrom('all' as const, 'none' as const),
  fc.subarray(['p0', 'p1', 'p2'], { minLength: 1 }),
);
const promotion = fc.record({ dates, joins, code: fc.option(fc.constant('CODE')) });
const shop = fc.array(promotion, { minLength: 1, maxLength: 3 }).map((all) =>
  all.map(
    ({ dates: [starts, ends], joins, code }, at): Promotion => ({
      ...{ id: `p${at}`, title: `P${at}`, sentence: '', story: '', starts, ends, code, joins },
      scope: {
        ...{ collections: null, frames: null, designs: null, materials: null, tints: null, coatings: null },
        ...{ leastGoodsMinor: null, leastPairs: 1 },
      },
      gift: { kind: 'shipping' },
    }),
  ),
);

const runs = ({ starts, ends }: Promotion, on: string) =>
  (starts === null || starts <= on) && (ends === null || ends >= on);

describe('the calendar of promotions', () => {
  it('law: two overlap on exactly the days on which both run', () => {
    fc.assert(
      fc.property(shop, (promotions) => {
        const { overlaps } = calendarOf(promotions, FIRST, 'UTC');
        promotions.forEach((one, at) => {
          for (const other of promotions.slice(at + 1)) {
            const found = overlaps.find(({ promotions: [a, b] }) => a === one.id && b === other.id);
            for (const on of DAYS) {
              const told = found !== undefined && (found.from ?? on) <= on && (found.to ?? on) >= on;
              expect(told).toBe(runs(one, on) && runs(other, on));
            }
          }
        });
      }),
    );
  });

  it('law: a gap is a run of days without a dated promotion, between days with one', () => {
    fc.assert(
      fc.property(shop, (promotions) => {
        const dated = promotions.filter(
          ({ code, starts, ends }) => code === null && (starts !== null || ends !== null),
        );
        const { gaps } = calendarOf(promotions, FIRST, 'UTC');
        const isBare = (on: string) => !dated.some((one) => runs(one, on));
        const isBetween = (on: string) =>
          dated.some(({ ends }) => ends !== null && ends < on) &&
          dated.some(({ starts }) => starts !== null && starts > on);
        for (const on of DAYS)
          expect(gaps.some(({ from, to }) => from <= on && on <= to)).toBe(isBare(on) && isBetween(on));
      }),
    );
  });

  it('law: between two turning days the same promotions run', () => {
    fc.assert(
      fc.property(shop, (promotions) => {
        const turns = turningDays(promotions, FIRST);
        const running = (on: string) => promotions.filter((one) => runs(one, on)).map(({ id }) => id);
        for (const on of DAYS)
          expect(running(on)).toEqual(running(turns.findLast((turn) => turn <= on) ?? on));
      }),
    );
  });

  it('tells a join that one side alone declares from one that nobody wants', () => {
    const [a, b] = fc.sample(
      shop.filter((all) => all.length === 3),
      1,
    )[0] as [Promotion, Promotion];
    const always = { starts: null, ends: null };
    const verdict = (one: Promotion['joins'], other: Promotion['joins']) =>
      calendarOf(
        [
          { ...a, ...always, joins: one },
          { ...b, ...always, joins: other },
        ],
        FIRST,
        'UTC',
      ).overlaps[0];
    expect(verdict(['p1'], ['p0'])).toMatchObject({ joins: 'both', refusing: null });
    expect(verdict(['p1'], 'none')).toMatchObject({ joins: 'one-sided', refusing: 'p1' });
    expect(verdict('all', ['p2'])).toMatchObject({ joins: 'neither', refusing: 'p1' });
    expect(verdict('none', 'none')).toMatchObject({ joins: 'neither', refusing: null });
  });

  it('gives the first and last instant on the clock of the shop and of the world', () => {
    const one = { ...(fc.sample(shop, 1)[0]?.[0] as Promotion), starts: '2026-10-25', ends: '2026-10-25' };
    // Summer time ended in Berlin on 25 October 2026: a day of 25 hours.
    expect(calendarOf([one], '2026-10-25', 'Europe/Berlin').runs[0]).toMatchObject({
      state: 'running',
      first: { local: '2026-10-25T00:00:00+02:00', utc: '2026-10-24T22:00:00Z' },
      last: { local: '2026-10-25T23:59:59+01:00', utc: '2026-10-25T22:59:59Z' },
    });
  });
});
