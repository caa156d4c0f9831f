/** Jobs of the demonstration shop to lay out, inspect and print: what a buyer saw is what the shop answers. */
import { fileURLToPath } from 'node:url';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { shownOf } from '../../src/order/shown.ts';
import type { JudgedPair } from '../../src/quote/judgePair.ts';
import { quote } from '../../src/quote/quote.ts';
import type { PairRequest, QuoteRequest } from '../../src/quote/request.ts';
import type { Job, JobPair } from '../../src/workroom/job.ts';
import { openJob, type WorkroomOffer } from '../../src/workroom/openJob.ts';

const loaded = loadCatalogue(fileURLToPath(new URL('../../content', import.meta.url)));
if (!loaded.ok) throw new Error('The demonstration shop has faults: npm run check lists them.');
export const shop: WorkroomOffer = loaded.catalogue;

const written = { vertexDistance: 12, issued: '2026-09-01' };

export const PAIRS = {
  single: {
    frame: 'sanderling',
    size: '51-19',
    colourway: 'wet-slate',
    prescription: {
      right: { sphere: -3.25, cylinder: -0.75, axis: 170 },
      left: { sphere: -2.75 },
      ...written,
    },
    fit: { pd: { right: 31.5, left: 32 }, fittingHeight: { right: 24, left: 24 } },
    lenses: {
      use: 'distance',
      design: 'single-vision',
      material: 'polycarbonate',
      tint: null,
      coating: 'anti-reflective',
    },
  },
  progressive: {
    frame: 'ruff',
    size: '49-20-saddle',
    colourway: 'collar-chestnut',
    prescription: {
      right: { sphere: -1.5, cylinder: -1, axis: 95, add: 2, prism: [{ amount: 1, base: 'in' }] },
      left: { sphere: -2, cylinder: -0.5, axis: 80, add: 2, prism: [{ amount: 1, base: 'in' }] },
      ...written,
    },
    fit: { pd: { right: 32, left: 31.5 }, fittingHeight: { right: 22, left: 22 } },
    lenses: {
      use: 'all',
      design: 'progressive-middle',
      material: 'thiourethane-1-60',
      tint: 'photochromic-grey',
      coating: 'anti-reflective-easy-clean',
    },
  },
  bifocal: {
    frame: 'knot',
    size: '55-17',
    colourway: 'black-bar',
    prescription: {
      right: { sphere: 1.75, cylinder: -1.25, axis: 20, add: 2.25 },
      left: { sphere: 2.25, cylinder: -0.5, axis: 165, add: 2.25 },
      ...written,
    },
    fit: {
      pd: { right: 31, left: 32 },
      nearPd: { right: 29, left: 30 },
      segmentHeight: { right: 17, left: 17 },
    },
    lenses: {
      use: 'all',
      design: 'bifocal-28',
      material: 'urethane-1-53',
      tint: null,
      coating: 'anti-reflective',
    },
  },
  sun: {
    frame: 'willet',
    size: '55-18',
    colourway: 'bottle',
    wearer: 'one-eyed',
    prescription: {
      right: { sphere: -2.25, cylinder: -0.5, axis: 100 },
      left: { balance: true },
      ...written,
    },
    fit: { pd: { right: 32, left: 32.5 }, fittingHeight: { right: 24, left: 24 } },
    lenses: {
      use: 'distance',
      design: 'single-vision',
      material: 'polycarbonate',
      tint: 'polarised-grey',
      coating: 'anti-reflective-back',
    },
  },
  drilled: {
    frame: 'stint',
    size: '49-19',
    colourway: 'pale-gold',
    prescription: {
      right: { sphere: -6.75, cylinder: -1.25, axis: 20 },
      left: { sphere: -7.25, cylinder: -0.5, axis: 165 },
      ...written,
    },
    fit: { pd: 62 },
    lenses: {
      use: 'distance',
      design: 'single-vision',
      material: 'thiourethane-1-67',
      tint: null,
      coating: 'anti-reflective',
    },
  },
  office: {
    frame: 'sanderling',
    size: '51-19',
    colourway: 'wet-slate',
    prescription: { right: { sphere: 1, add: 2 }, left: { sphere: 1.25, add: 2 }, ...written },
    fit: { pd: { right: 31.5, left: 32 }, fittingHeight: { right: 24, left: 24 } },
    lenses: {
      use: 'intermediate',
      design: 'office',
      material: 'standard-plastic',
      tint: null,
      coating: 'hard',
    },
  },
  wrapped: {
    frame: 'pratincole',
    size: '60-17',
    colourway: 'matt-black',
    prescription: { right: { sphere: -2 }, left: { sphere: -2, cylinder: -0.75, axis: 30 }, ...written },
    fit: { pd: { right: 32, left: 32 }, fittingHeight: { right: 20, left: 20 } },
    lenses: {
      use: 'distance',
      design: 'single-vision',
      material: 'polycarbonate',
      tint: 'grey-85',
      coating: 'anti-reflective-back',
    },
  },
  plano: {
    frame: 'pratincole',
    size: '60-17',
    colourway: 'matt-black',
    prescription: null,
    lenses: {
      use: 'none',
      design: 'plano',
      material: 'polycarbonate',
      tint: 'polarised-grey',
      coating: 'anti-reflective-back',
    },
  },
  own: {
    frame: { a: 52, b: 36, dbl: 18, mounting: 'full' },
    prescription: { right: { sphere: -1 }, left: { sphere: -1.25 }, ...written },
    fit: { pd: { right: 31.5, left: 32.5 } },
    lenses: {
      use: 'distance',
      design: 'single-vision',
      material: 'standard-plastic',
      tint: null,
      coating: 'hard',
    },
  },
  child: {
    frame: 'plover',
    size: '42-15',
    colourway: 'sand',
    wearer: 'child',
    prescription: { right: { sphere: 1.5 }, left: { sphere: 1.75 }, ...written },
    fit: { pd: { right: 26, left: 26 } },
    lenses: {
      use: 'distance',
      design: 'single-vision',
      material: 'polycarbonate',
      tint: null,
      coating: 'hard',
    },
  },
} as const satisfies Record<string, PairRequest>;
export type PairName = keyof typeof PAIRS;

export const told: JobPair = {
  wearer: 'Ines Halloran',
  prescription: { written: '-3.25 -0.75 x 170', prescriber: { name: 'Dr. Orrin Vale', place: 'Merriwick' } },
  measuredBy: 'optician',
  measuredNote: '',
  confirmed: [],
  wornBaseCurveD: 4.5,
};

/** A job of these pairs as an honest buyer sends it, every caution confirmed. Throws with the faults of the request. */
export function jobWith(pairs: readonly PairRequest[], change: Partial<QuoteRequest> = {}): Job {
  const request: QuoteRequest = { date: '2026-11-25', destination: 'US-ME', ...change, pairs };
  const reply = quote(shop, request);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  const { answer } = reply;
  return {
    number: '482109375562',
    date: request.date,
    order: {
      buyer: {
        name: 'Ada Quill',
        lines: ['3 Kelp Street', 'Merriwick, ME'],
        email: 'ada@example.org',
        phone: '',
      },
      request,
      pairs: pairs.map(({ prescription }, at) => ({
        ...told,
        prescription: prescription === null ? null : told.prescription,
        confirmed: (answer.pairs[at]?.findings ?? []).map(({ rule }) => rule),
      })),
      shown: shownOf(answer),
      payment: null,
      notes: '',
    },
  };
}

/** The job of named pairs. */
export const jobOfPairs = (...names: readonly PairName[]): Job => jobWith(names.map((name) => PAIRS[name]));

/** The judged pair of a request on its day. */
export function judgedOf(pair: PairRequest): JudgedPair {
  const [judged] = openJob(jobWith([pair]), shop).pairs;
  if (!judged) throw new Error('The pair cannot be judged.');
  return judged;
}
