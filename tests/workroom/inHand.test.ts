import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { JOB_STATES } from '../../src/catalogue/workroom.ts';
import {
  advance,
  countByState,
  daysBetween,
  lateJobs,
  laterRecord,
  nextState,
  receivedJob,
  remake,
  searchJobs,
  standing,
  troubles,
} from '../../src/workroom/inHand.ts';
import { shop } from './jobs.ts';

const day = fc
  .integer({ min: 0, max: 4000 })
  .map((n) => Temporal.PlainDate.from('2020-01-01').add({ days: n }).toString());
const job = (number: string, on = '2026-11-25') => receivedJob(number, on, 'R');
const why = { on: '2026-12-01', eye: 'right', note: '' } as const;

describe('days', () => {
  it('count as the calendar does', () => {
    fc.assert(
      fc.property(day, day, (from, to) => {
        expect(daysBetween(from, to)).toBe(Temporal.PlainDate.from(from).until(to).total('days'));
      }),
    );
    expect(() => daysBetween('2026-02-29', '2026-03-01')).toThrow('"2026-02-29" is not a date');
  });
});

describe('of two records of a job', () => {
  it('the one with more in it is the later one, whichever comes first', () => {
    const first = job('1');
    const later = remake(first, { ...why, reason: 'coating' }, 'R');
    expect([laterRecord(first, later), laterRecord(later, first)]).toEqual([later, later]);
  });
});

describe('a job', () => {
  it('goes through every state to the parcel, and from a return to new lenses', () => {
    const way = [job('1')];
    for (let next = nextState('received'); next !== null; next = nextState(next))
      way.push(advance(way.at(-1) ?? job('1'), { state: next, on: '2026-11-26', by: 'R' }));
    expect(way.map((one) => standing(one).state)).toEqual(JOB_STATES.slice(0, 6));
    expect(nextState('returned')).toBe('lenses-ordered');
  });

  it('never goes back in time, and forgets no step', () => {
    fc.assert(
      fc.property(fc.array(day, { minLength: 1 }), (days) => {
        const all = days.reduce(
          (one, on) => advance(one, { state: 'cut', on, by: '' }),
          job('1', '2020-01-01'),
        );
        expect(all.steps).toHaveLength(days.length + 1);
        const ons = all.steps.map(({ on }) => on);
        expect(ons).toEqual(ons.toSorted());
      }),
    );
  });
});

describe('what is late', () => {
  const allowed = shop.workroom.lateAfterDays;

  it('is what has stood longer than the shop allows, the latest first, and never what was sent', () => {
    const sent = advance(job('3', '2020-01-01'), { state: 'sent', on: '2020-01-02', by: '' });
    const late = lateJobs([job('1'), job('2', '2026-11-01'), sent], '2026-11-28', allowed);
    expect(late.map(({ job: one, days, state }) => [one.number, days, state])).toEqual([
      ['2', 27 - allowed.received, 'received'],
      ['1', 3 - allowed.received, 'received'],
    ]);
    expect(lateJobs([job('1')], '2026-11-27', allowed)).toEqual([]);
  });
});

describe('jobs together', () => {
  it('are counted by state, each once', () => {
    const jobs = [job('1'), job('2'), advance(job('3'), { state: 'cut', on: '2026-11-26', by: '' })];
    const counts = countByState(jobs);
    expect(counts).toMatchObject({ received: 2, cut: 1, sent: 0 });
    expect(Object.values(counts).reduce((sum, n) => sum + n)).toBe(jobs.length);
  });

  it('are found by number, and by name once the order was opened', () => {
    const jobs = [job('482109375562'), job('110000000042')];
    const names = new Map([['110000000042', ['Zo\u00eb \u00d8stergaard']]]);
    const found = (typed: string) => searchJobs(jobs, typed, names).map(({ number }) => number);
    expect(found('4821-0937')).toEqual(['482109375562']);
    expect(found('zoe')).toEqual(['110000000042']);
    expect(searchJobs(jobs, 'zoe', new Map())).toEqual([]);
    expect(found('')).toHaveLength(2);
  });

  it('tell what went wrong, most often first, and keep the reason of each remake', () => {
    const off = remake(
      remake(job('1'), { ...why, reason: 'layout' }, 'R'),
      { ...why, reason: 'coating' },
      'R',
    );
    const again = remake(job('2'), { ...why, reason: 'coating' }, 'R');
    expect(troubles([off, again, job('3'), job('4')])).toEqual([
      { reason: 'coating', count: 2, perHundred: 50 },
      { reason: 'layout', count: 1, perHundred: 25 },
    ]);
    expect(standing(off).state).toBe('lenses-ordered');
    expect(troubles([])).toEqual([]);
  });
});
