/** Hard pairs in the browser: advice, trade-offs and drawings agree with the engine, can be taken and taken back. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { civilDateAt } from '../../src/catalogue/civilDate.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import type { RunningServer } from '../../src/commands/serve.ts';
import { foldEyes } from '../../src/configurator/foldEyes.ts';
import { readEntries } from '../../src/configurator/readEntries.ts';
import { quoteWithAdvice } from '../../src/quote/advice.ts';
import type { PairAnswer } from '../../src/quote/answer.ts';
import { withChange } from '../../src/quote/change.ts';
import { optionReports, REPORTED_CHOICES } from '../../src/quote/options.ts';
import type { QuoteRequest } from '../../src/quote/request.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { JOURNEYS, type Journey } from './adviceJourneys.ts';
import { openBrowser } from './browser.ts';
import { serveShop } from './server.ts';
import { field, openWorksheet, type WorksheetPage } from './worksheetPage.ts';

let server: RunningServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveShop(), openBrowser()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
const shop = reading.catalogue;

const CHOSEN = ['use', 'wearer', 'size', 'design', 'material', 'blank', 'tint', 'coating'];
const ASKED = { timeout: 15_000 };

/** Opens the frame, chooses and types; the request is what the worksheet makes of it. */
async function walk({ frame: id, entries }: Journey, options = {}) {
  const frame = shop.frames.find((one) => one.id === id);
  if (frame === undefined) throw new Error(`The shop has no frame "${id}".`);
  const sheet = await openWorksheet(browser, server.origin, id, options);
  for (const [name, text] of Object.entries(entries)) {
    if (CHOSEN.includes(name)) await sheet.choose(name, text);
    else if (name.endsWith('.base')) await sheet.page.locator(field(name)).selectOption(text);
    else await sheet.type(name, text);
  }
  const date = civilDateAt(Date.now(), shop.shop.timeZone);
  const { request, faults } = readEntries(entries, { frame, data: shop, date });
  expect(faults).toEqual([]);
  return { sheet, request };
}

function advised(request: QuoteRequest): { readonly pair: PairAnswer; readonly total: number } {
  const reply = quoteWithAdvice(shop, request);
  if (!reply.ok || reply.answer.pairs[0] === undefined) throw new Error('The request has an answer.');
  return { pair: reply.answer.pairs[0], total: reply.answer.price.total };
}

const dollars = (minor: number) =>
  new Intl.NumberFormat('en', { style: 'currency', currency: 'USD' })
    .format(minor / 100)
    .replace('-', '\u2212');
const difference = (minor: number | null) =>
  minor === null ? '' : minor === 0 ? 'no change' : `${minor > 0 ? '+' : ''}${dollars(minor)}`;
const texts = async (sheet: WorksheetPage, selector: string) =>
  (await sheet.page.locator(selector).allTextContents()).map((text) => text.replace(/\s+/g, ' ').trim());

/** Remedies as the ticket folds them: once for both eyes where they say the same. */
function remediesOf({ findings }: PairAnswer): readonly string[] {
  return foldEyes(shop.words, findings).flatMap(({ rule, level, eye }) => {
    const own = findings.filter(
      (one) => one.rule === rule && one.level === level && (eye === 'both' || one.eye === eye),
    );
    return [...new Set(own.flatMap(({ remedy }) => (remedy ? [remedy.message] : [])))];
  });
}

async function expectAdvice(sheet: WorksheetPage, request: QuoteRequest): Promise<PairAnswer> {
  const { pair, total } = advised(request);
  await sheet.untilTotal(dollars(total));
  await expect.poll(() => texts(sheet, '.ws-remedy > p'), ASKED).toEqual(remediesOf(pair));
  const rows = sheet.page.locator('.ws-instead-table tbody tr');
  await expect.poll(() => rows.count(), ASKED).toBe(pair.alternatives.length);
  expect(await texts(sheet, '.ws-instead-table td:last-child')).toEqual(
    pair.alternatives.map(({ differenceMinor }) => difference(differenceMinor)),
  );
  const figures = await texts(sheet, '.ws-instead-table td:nth-child(2)');
  for (const [at, { aim, from, to }] of pair.alternatives.entries()) {
    const shown = (value: number) =>
      aim === 'cheapest'
        ? dollars(value)
        : value.toFixed(aim === 'thinnest' || aim === 'least-reflecting' ? 2 : 1);
    expect(figures[at]).toMatch(
      new RegExp(`${shown(to).replace('$', '\\$')}\\D* instead of ${shown(from).replace('$', '\\$')}`),
    );
  }
  const wayOut = pair.wayOut && [`${pair.wayOut.message} ${difference(pair.wayOut.differenceMinor)}`];
  await expect.poll(() => texts(sheet, '.ws-instead > p'), ASKED).toEqual(wayOut ?? []);
  return pair;
}

/** Every figure of every option, as the tables have it. */
async function expectTradeOffs(sheet: WorksheetPage, request: QuoteRequest): Promise<void> {
  for (const kind of REPORTED_CHOICES) {
    const table = sheet.page.locator('.ws-trade', { has: sheet.page.locator(`input[name="${kind}"]`) });
    const heads = await table.locator('thead th').allTextContents();
    const rows = table.locator('tbody tr:not(.ws-said)');
    for (const [at, report] of optionReports(shop, request, 0, kind).entries()) {
      const cells = await rows.nth(at).locator('td').allTextContents();
      const shown = (head: string) => {
        const column = heads.findIndex((text) => text.startsWith(head));
        return column < 0 ? null : cells[column - 1];
      };
      expect(shown('Price')).toContain(difference(report.differenceMinor));
      const of = report.tradeOff;
      for (const [head, value, digits] of [
        ['Thickest edge', of?.thickestMm, 2],
        ['Seen beyond', of?.beyondRimMm, 2],
        ['Center', of?.centreMm, 2],
        ['Both lenses', of?.massG, 1],
        ['Sharp view', of?.sharpDeg, 1],
        ['Color fringes', of?.fringesPrism, 2],
        ['Reflects', of?.reflectedPercent, 2],
      ] as const) {
        const text = shown(head);
        if (text !== null && text !== undefined)
          expect(text, `${kind} ${report.id} ${head}`).toContain(value?.toFixed(digits) ?? '\u2013');
      }
    }
  }
}

describe.each(JOURNEYS)('$name', (journey) => {
  it('is advised as by the command line, compared, drawn, changed and changed back', async () => {
    const { sheet, request } = await walk(journey);
    const { page } = sheet;
    const pair = await expectAdvice(sheet, request);
    await expectTradeOffs(sheet, request);
    await page.locator('.ws-shown').getByText('Cut open').click();
    await page.locator('.ws-board .dw-section').first().waitFor();
    const section = await page.locator('.ws-board').textContent();
    for (const lens of [pair.right, pair.left])
      expect(section).toContain(lens?.edgeThicknessMm.thickest.mm.toFixed(2));
    expect(await findAccessibilityFaults(page)).toEqual([]);

    const remedies = pair.findings.flatMap(({ remedy }) => (remedy ? [[remedy.change]] : []));
    const offered = [
      ...(pair.wayOut ? [pair.wayOut.changes] : []),
      ...remedies,
      ...pair.alternatives.map(({ changes }) => changes),
    ];
    const here = offered.find((changes) => !changes.some(({ kind }) => kind === 'frame'));
    expect(here?.[0]?.kind ?? null).toBe(journey.taken);
    if (here === undefined) {
      const link = page.locator('a.ws-take').first();
      const [change] = offered[0] ?? [];
      expect(await link.getAttribute('href')).toBe(`/frames/${change?.value}/`);
      expect(sheet.faults).toEqual([]);
      return page.context().close();
    }
    const [first] = request.pairs;
    const after = { ...request, pairs: first ? [here.reduce(withChange, first)] : [] };
    await page.locator('button.ws-take').first().click();
    await page.locator('.ws-applied').getByText('Changed to').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Take it back');
    await expectAdvice(sheet, after);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await expectAdvice(sheet, request);
    expect(await page.locator('.ws-applied').textContent()).toBe('');
    expect(page.url()).toBe(`${server.origin}/frames/${journey.frame}/`);
    expect(sheet.faults).toEqual([]);
    await page.context().close();
  });
});

const [large] = JOURNEYS as readonly [Journey];

describe('the drawings', () => {
  it('lay an option over the present choice while it is pointed at, or when it is chosen to compare with', async () => {
    const { sheet, request } = await walk(large);
    const { page } = sheet;
    await expectAdvice(sheet, request);
    await page.locator('.ws-shown').getByText('Cut open').click();
    const board = page.locator('.ws-board');
    await page.locator('input[name="material"][value="episulfide-1-74"]').hover();
    await board.getByText('Episulfide 1.74, dashed').waitFor();
    await page.locator('h1').hover();
    await board.getByText('Episulfide 1.74, dashed').waitFor({ state: 'detached' });
    await page.getByLabel('Compare with').selectOption({ label: 'Thiourethane 1.67' });
    await board.getByText('Thiourethane 1.67, dashed').waitFor();
    for (const name of ['The pair', 'Edge', 'Sharp view', 'Light']) {
      await page.locator('.ws-shown').getByText(name, { exact: true }).click();
      await board.locator('.dw').first().waitFor();
      expect(await findAccessibilityFaults(page)).toEqual([]);
    }
    expect(sheet.faults).toEqual([]);
    await page.context().close();
  });

  it('stand beside the choices with verdict and price on one screen of 1280 px', async () => {
    const { sheet } = await walk(large);
    const { page } = sheet;
    await page.locator('input[name="material"]').first().scrollIntoViewIfNeeded();
    for (const selector of ['.ws-board .dw', '.ws-sentence', '.ws-total', 'input[name="material"]']) {
      const box = await page.locator(selector).first().boundingBox();
      expect(box, selector).not.toBeNull();
      expect(box?.y, selector).toBeGreaterThanOrEqual(0);
      expect((box?.y ?? 0) + (box?.height ?? 0), selector).toBeLessThanOrEqual(900);
    }
    await page.context().close();
  });
});

describe.each([
  { name: 'a telephone, dark', width: 390, colorScheme: 'dark' as const },
  { name: '400 % zoom, forced colors, reduced motion', width: 320, forcedColors: 'active' as const },
])('on $name', ({ width, name: _, ...options }) => {
  it('verdict and price stay in reach, nothing runs over, and advice is a tap away', async () => {
    const { sheet } = await walk(large, {
      viewport: { width, height: 844 },
      reducedMotion: 'reduce',
      ...options,
    });
    const { page } = sheet;
    await page.locator('input[name="material"]').first().scrollIntoViewIfNeeded();
    const bar = await page.locator('.ws-total').boundingBox();
    expect(bar && bar.y + bar.height).toBeLessThanOrEqual(844);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.getByRole('button', { name: 'Show the whole ticket' }).click();
    await page.locator('button.ws-take').first().click();
    await page.locator('.ws-applied').getByText('Changed to').waitFor();
    expect(await findAccessibilityFaults(page)).toEqual([]);
    await page.context().close();
  });
});

it('says so when the other frames do not load, and judges all the same', async () => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  await context.route('**/other-frames/**', (route) => route.abort());
  const page = await context.newPage();
  await page.goto(`${server.origin}/frames/stint/`);
  await page.locator('#worksheet-root').scrollIntoViewIfNeeded();
  await page.locator('[id="ws-destination"] optgroup').waitFor({ state: 'attached' });
  for (const [name, text] of [
    ['right.sphere', '-2'],
    ['left.sphere', '-2'],
    ['pd.right', '31'],
    ['pd.left', '31'],
  ] as const)
    await page.locator(field(name)).fill(text);
  await page.locator('input[name="wearer"][value="child"]').check();
  await page.locator('.ws-sentence').getByText('We cannot make this pair').waitFor();
  await page.locator('.ws-instead').getByText('What could be done instead did not load.').waitFor();
  await context.close();
});
