/** The list of frames with a prescription: what each card says is what the one door answers. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { civilDateAt } from '../../src/catalogue/civilDate.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { frameJudge } from '../../src/quote/frameList.ts';
import type { ListRequest } from '../../src/quote/frameListRequest.ts';
import { quote } from '../../src/quote/quote.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { watchFaults } from './browser.ts';
import { browser, server } from './visit.ts';
import { field } from './worksheetPage.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
const shop = reading.catalogue;

async function openList(options: { width?: number; javaScriptEnabled?: boolean } = {}) {
  const { width = 1280, javaScriptEnabled = true } = options;
  const context = await browser.newContext({ viewport: { width, height: 900 }, javaScriptEnabled });
  const page = await context.newPage();
  const faults = watchFaults(page, server.origin);
  await page.goto(`${server.origin}/frames/`);
  return { page, faults };
}

async function enter(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  const summary = page.locator('.fl-entry > summary');
  if (!(await page.locator('.fl-entry').evaluate((one) => (one as HTMLDetailsElement).open)))
    await summary.click();
  for (const [name, text] of Object.entries(texts)) await page.locator(field(name)).fill(text);
}

const powers = {
  'right.sphere': '-7.25',
  'right.cylinder': '-0.75',
  'right.axis': '170',
  'left.sphere': '-6.75',
  'pd.right': '31.5',
  'pd.left': '32',
};
const asked = (): ListRequest => ({
  date: civilDateAt(Date.now(), shop.shop.timeZone),
  wearer: null,
  use: 'distance',
  prescription: { right: { sphere: -7.25, cylinder: -0.75, axis: 170 }, left: { sphere: -6.75 } },
  fit: { pd: { right: 31.5, left: 32 } },
});

const judged = (page: Page) => page.locator('.fl-count').getByText('a pair can be made').waitFor();
const names = (page: Page) => page.locator('.frame-card:visible h3 a').allTextContents();
const dollars = (minor: number) =>
  new Intl.NumberFormat('en', { style: 'currency', currency: 'USD' }).format(minor / 100);

describe('the list of frames', () => {
  it('says of three frames what the one door answers', async () => {
    const { page, faults } = await openList();
    await enter(page, powers);
    await judged(page);
    const judge = frameJudge(shop, asked());
    for (const id of ['sanderling', 'stint', 'dotterel']) {
      const frame = shop.frames.find((one) => one.id === id);
      const best = frame && judge(frame);
      if (!best) throw new Error(`The shop has no package for "${id}".`);
      const reply = quote(shop, { date: asked().date, pairs: [best.request] });
      if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
      const [pair] = reply.answer.pairs;
      const said = (await page.locator(`[data-frame="${id}"] .card-answer`).textContent()) ?? '';
      const verdicts = { makeable: 'Can be made', care: 'Can be made, with care', refused: 'Not with' };
      expect(said).toContain(verdicts[reply.answer.verdict]);
      if (reply.answer.verdict === 'refused') {
        expect(said).toContain(pair?.findings[0]?.message);
        continue;
      }
      expect(said).toContain(`from ${dollars(reply.answer.price.total)}`);
      expect(said).toContain(String(best.request.size));
      const edgeMm = Math.max(
        pair?.right?.edgeThicknessMm.thickest.mm ?? 0,
        pair?.left?.edgeThicknessMm.thickest.mm ?? 0,
      );
      const shownMm = Number(/([\d.]+) mm/.exec(said)?.[1]);
      // Rounded to 0.1 mm, from an outline of fewer radii: 0.05 mm each.
      expect(Math.abs(shownMm - edgeMm)).toBeLessThanOrEqual(0.1);
    }
    expect(await findAccessibilityFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('sorts by edge and by name, and goes back to the collections', async () => {
    const { page, faults } = await openList();
    const inShop = await names(page);
    await enter(page, powers);
    await judged(page);
    await page.getByLabel('Sort by').selectOption('edge');
    await page.getByRole('heading', { name: 'Frames by thickest edge' }).waitFor();
    const cards = await page.locator('.frame-card:visible').allTextContents();
    const edges = cards.flatMap((text) => {
      const [, mm] = /([\d.]+) mm\s*Whole pair/.exec(text) ?? [];
      return mm === undefined ? [] : [{ mm: Number(mm), childs: Number(text.includes('Made for children')) }];
    });
    expect(edges.length).toBeGreaterThan(3);
    expect(new Set(edges.map(({ childs }) => childs)).size).toBe(2);
    expect(edges).toEqual(edges.toSorted((a, b) => a.childs - b.childs || a.mm - b.mm));
    // Whose edge it is: the design and the material that were judged.
    expect(cards.join(' ')).toMatch(/With\s*Single vision, Standard plastic 1\.50/);
    await page.getByLabel('Sort by').selectOption('name');
    expect(await names(page)).toEqual(inShop.toSorted((a, b) => a.localeCompare(b, 'en')));
    await page.getByLabel('Sort by').selectOption('shop');
    expect(await names(page)).toEqual(inShop);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('filters by mounting and size without any prescription, by keyboard, at 320 px', async () => {
    const { page, faults } = await openList({ width: 320 });
    await page.locator('.fl-filters > summary').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('fl-mounting');
    // The list of a select opens outside of the page, where no key of a test reaches it.
    await page.locator('#fl-mounting').selectOption('drilled');
    const drilled = shop.frames.filter(({ mounting }) => mounting.kind === 'drilled');
    await page.locator('.fl-count').getByText(`${drilled.length} of ${shop.frames.length}`).waitFor();
    expect((await names(page)).sort()).toEqual(drilled.map(({ model }) => model).sort());
    await page.getByLabel('Lens width from').fill('99');
    await page.getByText('No frame is left').first().waitFor();
    await page.getByRole('button', { name: 'Show all frames' }).click();
    expect(await names(page)).toHaveLength(shop.frames.length);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('stores nothing until it is told to, then keeps for the worksheet too, and forgets all', async () => {
    const { page, faults } = await openList();
    await enter(page, powers);
    await judged(page);
    const stored = () => page.evaluate(() => localStorage.length);
    expect(await stored()).toBe(0);
    await page.getByLabel('Keep what I entered').check();
    expect(await stored()).toBe(1);
    await page.goto(`${server.origin}/frames/sanderling/`);
    await page.locator('#worksheet-root').scrollIntoViewIfNeeded();
    await page.waitForFunction(
      (selector) => (document.querySelector(selector) as HTMLInputElement | null)?.value === '-7.25',
      field('right.sphere'),
    );
    await page.goto(`${server.origin}/frames/`);
    await judged(page);
    // Pairs that other pages hold are forgotten too: the button says all.
    await page.evaluate(() => sessionStorage.setItem('bevelbook.basket.1', '{}'));
    await page.getByRole('button', { name: 'Forget all' }).click();
    expect(await stored()).toBe(0);
    expect(await page.evaluate(() => sessionStorage.length)).toBe(0);
    expect(await page.locator('.card-answer:visible').count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('is whole without script', async () => {
    const { page } = await openList({ javaScriptEnabled: false });
    expect(await names(page)).toHaveLength(shop.frames.length);
    expect(await page.locator('#list-root').isVisible()).toBe(false);
    await page.context().close();
  });
});
