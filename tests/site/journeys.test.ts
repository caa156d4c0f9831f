/**
 * Twelve hard journeys and one more, by key: what the shopper is told, and that the one door says the same of the same
 * package to the last digit. One browser and one page for all.
 */
import { spawnSync } from 'node:child_process';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningServer } from '../../src/commands/serve.ts';
import { readPaste } from '../../src/configurator/entry/readPaste.ts';
import { optionReports, REPORTED_CHOICES, type ReportedChoice } from '../../src/quote/options.ts';
import type { QuoteRequest } from '../../src/quote/request.ts';
import { withChanges } from '../../src/quote/withChanges.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { openBrowser } from './browser.ts';
import { JOURNEYS } from './journeys.ts';
import { serveShop } from './server.ts';
import { difference, dollars, door, enter, expectAdvice, requestOf, shop, walk } from './walk.ts';
import { untilAlive, type WorksheetPage, worksheetOn } from './worksheetPage.ts';

let server: RunningServer;
let browser: Browser;
let page: Page;
let sheet: WorksheetPage;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveShop(), openBrowser()]);
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  sheet = worksheetOn(page, server.origin);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function open(frame: string): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(`${server.origin}/frames/${frame}/`);
  await untilAlive(page);
}

/** The text of the ticket with a blank between its parts. */
const ticketText = () =>
  page
    .locator('#ws-ticket :is(p, th, td, li, h4)')
    .allTextContents()
    .then((all) => all.join(' ').replace(/\s+/g, ' '));

/** What stands below an option in its list. */
const saidOf = (kind: ReportedChoice, id: string) =>
  page.locator(`[id="ws-${kind}-${id}-mark"]`).textContent();

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

/** On a telephone the same page fits, and verdict and price are in sight. */
async function expectOnTelephone(): Promise<void> {
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.locator('input[name="material"]').first().scrollIntoViewIfNeeded();
  const bar = await page.locator('.ws-total').boundingBox();
  expect((bar?.y ?? 900) + (bar?.height ?? 0)).toBeLessThanOrEqual(844);
}

/** Frames whose journeys also compare every figure of every option, take the advice and take it back. */
const COMPARED = ['curlew', 'sanderling', 'whimbrel'];

describe.each(JOURNEYS)('$name', ({ frame, entries, says, options = [], taken }) => {
  it('is told, and quoted the same by the one door', async () => {
    await open(frame);
    const request = await walk(sheet, { frame, entries });
    const { wayOut, alternatives, findings } = await expectAdvice(sheet, request);
    for (const text of says) await expect.poll(ticketText).toContain(text.trim());
    for (const [kind, id, text] of options) await expect.poll(() => saidOf(kind, id)).toContain(text);
    if (COMPARED.includes(frame)) await expectTradeOffs(sheet, request);
    expect(await findAccessibilityFaults(page)).toEqual([]);

    const remedies = findings.flatMap(({ remedy }) => (remedy ? [[remedy.change]] : []));
    const offered = [
      ...(wayOut ? [wayOut.changes] : []),
      ...remedies,
      ...alternatives.map((one) => one.changes),
    ];
    const here = offered.find((changes) => !changes.some(({ kind }) => kind === 'frame'));
    expect(here?.map(({ kind }) => kind) ?? null).toEqual(taken);
    if (here === undefined)
      expect(await page.locator('a.ws-take').first().getAttribute('href')).toBe(
        `/frames/${offered[0]?.[0]?.value}/`,
      );
    else if (COMPARED.includes(frame)) {
      const [first] = request.pairs;
      await page.locator('button.ws-take').first().focus();
      await page.keyboard.press('Enter');
      await page.locator('.ws-applied').getByText('Changed to').waitFor();
      await expectAdvice(sheet, { ...request, pairs: first ? [withChanges(shop, first, here)] : [] });
      // The focus is on the way back.
      await page.keyboard.press('Enter');
      await expectAdvice(sheet, request);
    }
    await expectOnTelephone();
    expect(sheet.faults).toEqual([]);
  });
});

it('a pasted prescription with a typing error is marked, mended, and offered the use that takes its add', async () => {
  await open('godwit');
  const wrong = 'OD -2.25 -0.75 x 19O add +1.50\nOS -2.00 -0.50 x 10 add +1.50\nPD 63';
  await page.getByText('Paste it as text instead').focus();
  await page.keyboard.press('Enter');
  await page.locator('#ws-paste').focus();
  await page.keyboard.insertText(wrong);
  await page.getByRole('button', { name: 'Read it into the fields' }).press('Enter');
  await page
    .getByText('\u201c19O\u201d: letters stand in a number. Expected: digits only, such as 170.')
    .waitFor();
  await page.getByText('Right was not understood to its end').waitFor();
  const mended = wrong.replace('19O', '170');
  await page.locator('#ws-paste').focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.insertText(mended);
  await page.getByRole('button', { name: 'Read it into the fields' }).press('Enter');
  await page.getByText('Right \u22122.25 \u22120.75 x 170').waitFor();
  await page
    .locator('.en-paste')
    .getByRole('button', { name: 'Choose: Distance and near in one' })
    .press('Enter');
  expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('all');
  await page.locator('.en-add').first().waitFor({ state: 'detached' });
  const heights = { 'fittingHeight.right': '22', 'fittingHeight.left': '22' };
  for (const [name, text] of Object.entries(heights)) await enter(page, name, text);
  await expectAdvice(sheet, requestOf('godwit', { ...readPaste(mended).entries, ...heights, use: 'all' }));
  await expectOnTelephone();
  expect(sheet.faults).toEqual([]);
});

it('a basket with two offers that may not join uses one, says why, and is what npm run quote prints', async () => {
  const eyes = { 'right.sphere': '-3.25', 'left.sphere': '-2.75', 'pd.right': '31.5', 'pd.left': '32' };
  const terms = { codes: 'firstpair' };
  const put = async (frame: string, entries: Readonly<Record<string, string>>, number: number) => {
    await open(frame);
    for (const [name, text] of Object.entries(entries)) await enter(page, name, text);
    await page
      .locator('.sh')
      .getByRole('button', { name: /^Put into the basket/ })
      .press('Enter');
    await page.getByText(`In the basket as pair ${number}.`).waitFor();
  };
  await put('sanderling', { ...eyes, ...terms }, 1);
  await put('knot', eyes, 2);
  await page.getByRole('link', { name: 'Go to the basket' }).press('Enter');
  await page.locator('.bk-pair').nth(1).waitFor();
  const first = requestOf('sanderling', { ...eyes, ...terms });
  const request = { ...first, pairs: [...first.pairs, ...requestOf('knot', eyes).pairs] };
  const answer = door(request);
  const order = page.getByRole('region', { name: 'The whole order' });
  await expect.poll(() => order.locator('tfoot td').textContent()).toBe(dollars(answer.price.total));
  const [code] = answer.price.codes;
  expect(code?.used).toBe(false);
  await order.getByText(code?.message ?? '').waitFor();
  for (const { label } of answer.price.lines) await page.getByText(label, { exact: true }).first().waitFor();
  const { stdout, status } = spawnSync('node', ['src/commands/quote.ts', '-'], {
    input: JSON.stringify(request),
    encoding: 'utf8',
  });
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(answer)));
  expect(await findAccessibilityFaults(page)).toEqual([]);
  expect(sheet.faults).toEqual([]);
});
