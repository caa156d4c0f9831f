import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '../../src/workroom/job.ts';
import { openJob } from '../../src/workroom/openJob.ts';
import { verify } from '../../src/workroom/verify.ts';
import { jobOfPairs, jobWith, PAIRS, type PairName, shop, told } from './jobs.ts';

const verified = (job: Job) => verify(openJob(job, shop));
const open = (job: Job) =>
  verified(job)
    .checks.filter(({ holds }) => holds === false)
    .map(({ item }) => item);
const changed = (job: Job, change: Partial<Job['order']>): Job => ({
  ...job,
  order: { ...job.order, ...change },
});

describe('an order of today', () => {
  it('has the price to the cent and every figure to 0.001 mm that the buyer saw', () => {
    const names = Object.keys(PAIRS) as PairName[];
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...names), { minLength: 1, maxLength: 4 }), (some) => {
        const found = verified(jobOfPairs(...some));
        expect([found.prices, found.findings, found.figures]).toEqual([[], [], []]);
        expect(found.nowTotalMinor).toBe(found.shownTotalMinor);
      }),
      { numRuns: 20 },
    );
  });

  it('leaves nothing to ask when all is told and confirmed', () => {
    expect(open(jobOfPairs('single'))).toEqual([]);
    expect(verified(jobOfPairs('single')).calls).toEqual([]);
  });
});

describe('an order that was shown otherwise', () => {
  const job = jobOfPairs('single');
  const { shown } = job.order;

  it('is told line by line, and by its total', () => {
    const lines = shown.price.lines.map((line, at) => (at === 0 ? { ...line, amount: 100 } : line));
    const found = verified(changed(job, { shown: { ...shown, price: { ...shown.price, lines, total: 1 } } }));
    expect(found.prices).toEqual([
      { label: 'Frame Sanderling', shownMinor: 100, nowMinor: shown.price.lines[0]?.amount },
    ]);
    expect(found.nowTotalMinor).toBe(shown.price.total);
    expect(found.calls.map(({ reason }) => reason)).toEqual(['price']);
  });

  it('is told where its total alone is wrong', () => {
    const total = shown.price.total - 1;
    expect(open(changed(job, { shown: { ...shown, price: { ...shown.price, total } } }))).toEqual(['price']);
  });

  it('is told with lines that were left out or made up', () => {
    const [first, ...rest] = shown.price.lines;
    if (first === undefined) throw new Error('The order has lines.');
    const madeUp = { ...first, label: 'Made up', amount: -first.amount };
    const found = verified(
      changed(job, { shown: { ...shown, price: { ...shown.price, lines: [...rest, madeUp] } } }),
    );
    expect(found.prices).toEqual([
      { label: 'Made up', shownMinor: -first.amount, nowMinor: null },
      { label: first.label, shownMinor: null, nowMinor: first.amount },
    ]);
  });

  it('is told with findings and figures that are new or gone', () => {
    const [pair] = shown.pairs;
    if (!pair?.right) throw new Error('The order has a pair with lenses.');
    const finding = {
      rule: 'stairs',
      level: 'note',
      eye: 'both',
      figures: {},
      message: 'Never said.',
    } as const;
    const other = { ...pair, findings: [finding], right: { ...pair.right, centreThicknessMm: 9 } };
    const found = verified(changed(job, { shown: { ...shown, pairs: [other] } }));
    expect(found.findings.filter(({ change }) => change === 'gone').map(({ message }) => message)).toEqual([
      'Never said.',
    ]);
    expect(found.findings.filter(({ change }) => change === 'new')).toHaveLength(pair.findings.length);
    expect(found.figures).toEqual([
      { pair: 0, eye: 'right', figure: 'centreThicknessMm', shown: 9, now: pair.right.centreThicknessMm },
    ]);
  });
});

describe('what has to be asked', () => {
  it('is who prescribed and who measured, where that is not said', () => {
    const job = jobOfPairs('single');
    const silent = {
      ...told,
      measuredBy: 'nobody' as const,
      prescription: { written: '', prescriber: { name: '', place: '' } },
      confirmed: job.order.pairs[0]?.confirmed ?? [],
    };
    const found = verified(changed(job, { pairs: [silent] }));
    expect(found.calls.map(({ pair, reason }) => [pair, reason])).toEqual([
      [0, 'prescriber'],
      [0, 'measured'],
    ]);
    expect(open(changed(job, { pairs: [silent] }))).toEqual(['prescriber', 'measured']);
  });

  it('is every caution that nobody confirmed', () => {
    const job = jobOfPairs('sun');
    const bare = changed(job, { pairs: [{ ...told, confirmed: [] }] });
    const cautions = job.order.shown.pairs[0]?.findings.filter(({ level }) => level === 'caution') ?? [];
    expect(cautions.length).toBeGreaterThan(0);
    expect(verified(bare).calls.map(({ message }) => message)).toEqual([
      ...new Set(cautions.map(({ message }) => message)),
    ]);
  });

  it('is nothing about prescriptions for a pair without power', () => {
    const { checks } = verified(jobOfPairs('plano'));
    for (const item of ['prescription', 'prescriber', 'measured'])
      expect(checks.find((one) => one.item === item)?.holds).toBeNull();
  });

  it('is what the shop no longer has; the rest of the order is still judged', () => {
    const job = jobOfPairs('single', 'plano');
    const gone = { ...shop, frames: shop.frames.filter(({ id }) => id !== 'sanderling') };
    const opened = openJob(job, gone);
    expect(opened.pairs.map((pair) => pair === null)).toEqual([true, false]);
    const found = verify(opened);
    expect(found.nowTotalMinor).toBeNull();
    expect(found.calls.filter(({ reason }) => reason === 'unreadable')).toHaveLength(1);
    expect(found.calls[0]?.message).toMatch(/^pairs\.0\.frame: /);
  });

  it('is nothing about a frame that is called otherwise now, which is told', () => {
    const job = jobOfPairs('single', 'plano');
    const renamed = {
      ...shop,
      frames: shop.frames.map((frame) =>
        frame.id === 'sanderling' ? { ...frame, id: 'strand', formerIds: ['sanderling'] } : frame,
      ),
    };
    for (const language of ['en', 'fr-CA']) {
      const request = { ...job.order.request, language };
      const found = verify(openJob(changed(job, { request }), renamed));
      expect(found.moved).toEqual([{ pair: 0, from: 'sanderling', to: 'strand' }]);
      expect([found.calls, found.prices, found.figures, found.findings]).toEqual([[], [], [], []]);
    }
  });

  it('is a stop that holds for the day of the order', () => {
    const old = { ...PAIRS.single, prescription: { ...PAIRS.single.prescription, issued: '2020-01-01' } };
    const found = verified(jobWith([old]));
    expect(found.checks.filter(({ holds }) => holds === false).map(({ item }) => item)).toEqual([
      'makeable',
      'prescription',
    ]);
    expect(found.calls).toHaveLength(1);
  });
});
