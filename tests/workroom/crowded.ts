/** A job with overlong text in every field, many findings and lines, and a pair that fails in everything. */
import type { MeasuredLens, MeasuredPair } from '../../src/workroom/inspection/measured.ts';
import { perfectPair } from '../../src/workroom/inspection/perfect.ts';
import type { Job } from '../../src/workroom/job.ts';
import { openJob } from '../../src/workroom/openJob.ts';
import type { PaperOptions } from '../../src/workroom/papers/context.ts';
import { shop, told } from './jobs.ts';

/** The job with `text` wherever a buyer can write. */
export function crowdedJob(job: Job, text: string): Job {
  const { order } = job;
  const prescription = { written: text, prescriber: { name: text, place: text } };
  const pairs = order.pairs.map((pair) => ({
    ...told,
    wearer: text,
    measuredNote: text,
    prescription: pair.prescription && prescription,
    confirmed: [],
  }));
  const many = Array.from({ length: 30 }, (_, i) => `${i} ${text}`);
  const findings = many.map(
    (message) => ({ rule: 'x', level: 'stop', eye: 'both', figures: {}, message }) as const,
  );
  const lines = many.map((label) => ({ kind: 'frame', pair: 0, label, amount: 1000, source: 'x' }) as const);
  const shown = {
    ...order.shown,
    pairs: order.shown.pairs.map((pair) => ({ ...pair, findings, right: null })),
    price: { ...order.shown.price, lines },
  };
  const buyer = { name: text, lines: Array.from({ length: 12 }, () => text), email: text, phone: text };
  const payment = { id: 'x', label: text, words: text, link: null };
  return { ...job, order: { ...order, buyer, pairs, shown, payment, notes: `${text}\n${text}` } };
}

const far = (lens: MeasuredLens, sign: 1 | -1): MeasuredLens => ({
  ...lens,
  power: { sphereD: 3, cylinderD: 2, axisDeg: 33 },
  ...(lens.addD === undefined ? {} : { addD: lens.addD + 2 }),
  prism: { x: 3, y: 5 * sign },
  pdMm: 50,
  heightMm: 25 + 15 * sign,
  ...(lens.segmentHeightMm === undefined ? {} : { segmentHeightMm: 20 + 10 * sign, segmentTiltDeg: 10 }),
  centreThicknessMm: 9,
  baseCurveReadingD: 12,
  warpageD: 3,
  ...(lens.polarisingAxisDeg === undefined ? {} : { polarisingAxisDeg: 100 }),
});

/** What an owner may add, `text` in each, every measurement far off. */
export function crowdedOptions(job: Job, text: string): PaperOptions {
  const { pairs } = openJob(job, shop);
  const measured = pairs.map((judged): MeasuredPair | null => {
    const perfect = judged && perfectPair(judged);
    if (perfect === null) return null;
    const lenses = { right: far(perfect.right, 1), left: far(perfect.left, -1) };
    return { ...perfect, ...lenses, by: text, on: '2026-12-02', remarks: text };
  });
  return {
    measured,
    markings: pairs.map(() => text),
    supplierRemark: pairs.map(() => text),
    paid: { on: '2026-11-26', how: text, amountMinor: 5 },
    parcel: { on: '2026-12-03', carrier: text, number: text },
  };
}
