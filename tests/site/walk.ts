/** A journey walked by key on a worksheet, and what the one door says of the same package. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { civilDateAt } from '../../src/catalogue/civilDate.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import type { Entries } from '../../src/configurator/fields.ts';
import { foldEyes } from '../../src/configurator/foldEyes.ts';
import { readEntries } from '../../src/configurator/readEntries.ts';
import { quoteWithAdvice } from '../../src/quote/advice.ts';
import type { Answer, PairAnswer } from '../../src/quote/answer.ts';
import type { QuoteRequest } from '../../src/quote/request.ts';
import { readRequest } from '../../src/quote/requestSchema.ts';
import type { Journey } from './journeys.ts';
import { field, type WorksheetPage } from './worksheetPage.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
export const shop = reading.catalogue;

const CHOSEN = ['use', 'wearer', 'size', 'design', 'material', 'blank', 'tint', 'coating'];
const ASKED = { timeout: 15_000 };

/** Enters by key alone: what is typed is typed, a radio button is reached and pressed. */
export async function enter(page: Page, name: string, text: string): Promise<void> {
  if (CHOSEN.includes(name)) {
    await page.locator(`input[name="${name}"][value="${text}"]`).focus();
    return page.keyboard.press('Space');
  }
  await page.locator(field(name)).focus();
  if (name.endsWith('.base')) return page.keyboard.type(text);
  if (name === 'issued') return page.locator(field(name)).fill(text);
  await page.keyboard.insertText(text);
  return page.keyboard.press('Tab');
}

/** Chooses and types; the request is what the worksheet makes of it, sent as the command line sends it. */
export async function walk(
  sheet: WorksheetPage,
  { frame: id, entries }: Pick<Journey, 'frame' | 'entries'>,
): Promise<QuoteRequest> {
  for (const [name, text] of Object.entries(entries)) await enter(sheet.page, name, text);
  return requestOf(id, entries);
}

/** The request of entries, through JSON as a file has it. */
export function requestOf(id: string, entries: Entries): QuoteRequest {
  const frame = shop.frames.find((one) => one.id === id);
  if (frame === undefined) throw new Error(`The shop has no frame "${id}".`);
  const date = civilDateAt(Date.now(), shop.shop.timeZone);
  const { request, faults } = readEntries(entries, { frame, data: shop, date });
  expect(faults).toEqual([]);
  const read = readRequest(JSON.parse(JSON.stringify(request)), date);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.request;
}

/** The answer as `npm run quote` prints it. */
export function door(request: QuoteRequest): Answer {
  const reply = quoteWithAdvice(shop, request);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  return reply.answer;
}

export const dollars = (minor: number) =>
  new Intl.NumberFormat('en', { style: 'currency', currency: 'USD' })
    .format(minor / 100)
    .replace('-', '\u2212');
export const difference = (minor: number | null) =>
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

/** The ticket's total, verdict, edges, remedies, alternatives and way out are those of the door. */
export async function expectAdvice(sheet: WorksheetPage, request: QuoteRequest): Promise<PairAnswer> {
  const { verdict, pairs, price } = door(request);
  const [pair] = pairs;
  if (pair === undefined) throw new Error('The request has one pair.');
  await sheet.untilTotal(dollars(price.total));
  await sheet.page.locator(`.ws-verdict-${verdict}`).waitFor();
  const edges = [pair.right, pair.left].flatMap((lens) => lens?.edgeThicknessMm.thickest.mm.toFixed(2) ?? []);
  const shownEdges = async () =>
    (await texts(sheet, '.ws-lenses:not(.ws-instead-table) tr:has(th:text-is("Thickest edge")) td')).map(
      (text) => text.split(' ')[0],
    );
  await expect.poll(shownEdges, ASKED).toEqual(edges);
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
  const priced = (minor: number | null) => (minor === 0 ? 'The price stays the same.' : difference(minor));
  const wayOut = pair.wayOut && [`${pair.wayOut.message} ${priced(pair.wayOut.differenceMinor)}`];
  await expect.poll(() => texts(sheet, '.ws-instead > p'), ASKED).toEqual(wayOut ?? []);
  return pair;
}
