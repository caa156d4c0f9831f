import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { MOUNTINGS } from '../../src/catalogue/frame.ts';
import { JOB_STATES } from '../../src/catalogue/workroom.ts';
import { PLACED_ITEMS } from '../../src/optics/tolerance/table.ts';
import { WEARERS } from '../../src/quote/request.ts';
import { LEVELS } from '../../src/rules/finding.ts';
import { REMAKE_REASONS } from '../../src/workroom/inHand.ts';
import type { MeasuredPair } from '../../src/workroom/inspection/measured.ts';
import { perfectPair } from '../../src/workroom/inspection/perfect.ts';
import type { Job } from '../../src/workroom/job.ts';
import { openJob } from '../../src/workroom/openJob.ts';
import type { PaperOptions } from '../../src/workroom/papers/context.ts';
import { papersOf, printable } from '../../src/workroom/papers.ts';
import { PRINT_STYLE } from '../../src/workroom/printStyle.ts';
import { RECEIPT_GROUPS } from '../../src/workroom/receiptLines.ts';
import { jobOfPairs, jobWith, PAIRS, type PairName, shop, told } from './jobs.ts';

const NAMES = Object.keys(PAIRS) as PairName[];

/** Everything that the owner can add, with each text as given; measurements off in all that can be off. */
function fullOptions(job: Job, text: string, offBy = 0): PaperOptions {
  const { pairs, answer } = openJob(job, shop);
  const measured = pairs.map((judged): MeasuredPair | null => {
    const perfect = judged && perfectPair(judged);
    if (perfect === null) return null;
    const { power } = perfect.right;
    const right = { ...perfect.right, power: { ...power, sphereD: power.sphereD + offBy } };
    const alignment = shop.workroom.alignment.map((_, at) => at > 0);
    return { ...perfect, right, by: text, on: '2026-12-02', remarks: text, alignment };
  });
  return {
    measured,
    markings: pairs.map(() => text),
    supplierRemark: pairs.map(() => text),
    paid: { on: '2026-11-26', how: text, amountMinor: answer?.price.total ?? 0 },
    parcel: { on: '2026-12-03', carrier: text, number: text },
  };
}

describe('the papers of a job', () => {
  it('are one for each purpose, and one for each pair where a pair needs its own', () => {
    const ids = (job: Job) => papersOf(job, shop).map(({ id }) => id);
    expect(ids(jobOfPairs('single'))).toEqual([
      'check',
      'ticket',
      'lens-order',
      'layout',
      'inspection',
      'record',
      'receipt',
      'care',
      'slip',
    ]);
    const two = ids(jobOfPairs('progressive', 'plano'));
    expect(two).toHaveLength(14);
    expect(new Set(two).size).toBe(14);
    expect(two).toContain('layout-2');
  });

  test.each(NAMES)('%s: hold no missing value', (name) => {
    const job = jobOfPairs(name);
    for (const options of [{}, fullOptions(job, 'R. Tamsin')])
      for (const { html } of papersOf(job, shop, options))
        expect(html).not.toMatch(/undefined|NaN|Infinity|\[object|>null</);
  });

  it('say no name on the lens order and the layout, and nothing of eyes on the slip', () => {
    const job = jobOfPairs('progressive');
    const paper = (id: string) => papersOf(job, shop).find((one) => one.id === id)?.html ?? '';
    for (const id of ['lens-order', 'layout']) expect(paper(id)).not.toMatch(/Halloran|Quill/);
    expect(paper('slip')).not.toMatch(/progressive|1\.50|prescri/i);
  });

  it('are a check sheet alone for a pair that the shop no longer has', () => {
    const gone = { ...shop, frames: [] };
    expect(papersOf(jobOfPairs('single'), gone).map(({ id }) => id)).toEqual(['check', 'care', 'slip']);
  });

  it('are there for a pair that cannot be cut, and say so', () => {
    const strong = {
      right: { sphere: -25 },
      left: { sphere: -25 },
      vertexDistance: 12,
      issued: '2026-09-01',
    };
    const papers = papersOf(jobWith([{ ...PAIRS.single, prescription: strong }]), shop);
    const said = shop.words['workroom.noLens'] ?? '?';
    for (const id of ['lens-order', 'layout', 'inspection'])
      expect(papers.find((one) => one.id === id)?.html).toContain(said);
  });

  it('leave the price that the buyer saw on the receipt only where the owner honours it', () => {
    const job = jobOfPairs('single');
    const { shown } = job.order;
    const cheap: Job = {
      ...job,
      order: { ...job.order, shown: { ...shown, price: { ...shown.price, total: 123 } } },
    };
    const total = (options: PaperOptions) =>
      /<b>\$[\d.,]+<\/b>/.exec(
        papersOf(cheap, shop, options).find(({ id }) => id === 'receipt')?.html ?? '',
      )?.[0];
    expect(total({ price: 'shown' })).toBe('<b>$1.23</b>');
    expect(total({})).not.toBe('<b>$1.23</b>');
  });
});

describe('text from an order', () => {
  const HOSTILE = `</p><script>alert(1)</script><img src=x onerror="alert('2')"> style='x' &lt; \u202egnp`;
  const hostile = (): Job => {
    const job = jobOfPairs('progressive', 'plano');
    const prescription = { written: HOSTILE, prescriber: { name: HOSTILE, place: HOSTILE } };
    const pairs = job.order.pairs.map((pair) => ({
      ...told,
      wearer: HOSTILE,
      measuredNote: HOSTILE,
      prescription: pair.prescription && prescription,
      confirmed: [],
    }));
    const finding = { rule: HOSTILE, level: 'stop', eye: 'both', figures: {}, message: HOSTILE } as const;
    const shown = {
      ...job.order.shown,
      pairs: job.order.shown.pairs.map((pair) => ({ ...pair, findings: [finding] })),
      price: {
        ...job.order.shown.price,
        lines: [{ kind: 'frame', pair: 0, label: HOSTILE, amount: 1, source: HOSTILE }] as const,
      },
    };
    const buyer = { name: HOSTILE, lines: [HOSTILE, HOSTILE], email: HOSTILE, phone: HOSTILE };
    const payment = { id: HOSTILE, label: HOSTILE, words: HOSTILE, link: null };
    return { ...job, order: { ...job.order, buyer, pairs, shown, payment, notes: HOSTILE } };
  };

  it('stays text on every paper: no element, no handler, no style of its own', () => {
    const job = hostile();
    const papers = [
      ...papersOf(job, shop, fullOptions(job, HOSTILE)),
      ...papersOf(job, shop, { price: 'shown' }),
    ];
    expect(papers.filter(({ html }) => html.includes('&lt;script&gt;')).length).toBeGreaterThan(8);
    for (const { html } of papers) {
      expect(html).not.toMatch(/<(script|img)/i);
      const tags = html.match(/<[^>]*>/g) ?? [];
      for (const tag of tags) expect(tag).not.toMatch(/\s(on\w+|style|href|src)=/i);
      expect(html).not.toContain('\u202e');
    }
  });

  it('leaves every element that is opened closed', () => {
    const job = hostile();
    for (const { html } of papersOf(job, shop, fullOptions(job, HOSTILE))) {
      const open: string[] = [];
      for (const [, close, name = '', rest = ''] of html.matchAll(/<(\/?)([a-z0-9]+)([^>]*)>/g)) {
        if (name === 'br' || rest.endsWith('/')) continue;
        if (close === '') open.push(name);
        else expect(open.pop()).toBe(name);
      }
      expect(open).toEqual([]);
    }
  });
});

describe('the words of the workroom', () => {
  const sources = readdirSync('src/workroom', { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => readFileSync(`${entry.parentPath}/${entry.name}`, 'utf8'))
    .join('\n');
  const known = Object.keys(shop.words)
    .filter((key) => key.startsWith('workroom.'))
    .map((key) => key.slice('workroom.'.length));

  it('are all asked for somewhere, by their name or by the beginning of it', () => {
    const begun = [...sources.matchAll(/`([\w-]+(?:\.[\w-]+)*[.-])\$\{/g)].map(([, start = '']) => start);
    const unused = known.filter(
      (key) => !sources.includes(`'${key}'`) && !begun.some((start) => key.startsWith(start)),
    );
    // What went wrong is told by the page, by the reasons of inHand.ts.
    expect(unused.filter((key) => !key.startsWith('trouble.'))).toEqual([]);
  });

  it.each([
    ['state', JOB_STATES],
    ['trouble', REMAKE_REASONS],
    [
      'item',
      [
        ...Object.keys(PLACED_ITEMS),
        'power',
        'cylinder',
        'axis',
        'add',
        'horizontal-prism',
        'vertical-prism',
      ],
    ],
    ['mounting', MOUNTINGS],
    ['wearer', WEARERS],
    ['level', LEVELS],
    ['group', RECEIPT_GROUPS],
    ['basis', ['text-seen', 'from-memory', 'shop']],
    ['outcome', ['pass', 'fail', 'no-limit-held', 'not-measured']],
    ['call', ['price', 'prescriber', 'measured', 'unreadable']],
    ['unit', [...new Set(Object.values(PLACED_ITEMS)), 'prism-dioptres']],
  ])('name every %s', (group, names) => {
    for (const name of names) expect(known).toContain(`${group}.${name}`);
  });
});

describe('a printed document', () => {
  it('fetches nothing, runs nothing, and holds the papers as they are', () => {
    const papers = papersOf(jobOfPairs('single'), shop);
    const page = printable(papers, 'Papers <of> 4821', 'en');
    expect(page).toContain("default-src 'none'");
    expect(page).toContain('<title>Papers &lt;of&gt; 4821</title>');
    for (const { html } of papers) expect(page).toContain(html);
    expect(PRINT_STYLE).not.toMatch(/url\(|@import|<\//);
  });
});
