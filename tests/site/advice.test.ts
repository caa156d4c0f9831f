/** Advice and drawings of a hard pair beyond one journey: laid over, on narrow screens, and when a part does not load. */
import type { BrowserContextOptions } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { findAccessibilityFaults } from './accessibility.ts';
import { LARGE } from './journeys.ts';
import { browser, server } from './visit.ts';
import { expectAdvice, walk } from './walk.ts';
import { field, openWorksheet } from './worksheetPage.ts';

async function open(options: BrowserContextOptions = {}) {
  const sheet = await openWorksheet(browser, server.origin, LARGE.frame, options);
  return { sheet, request: await walk(sheet, LARGE) };
}

describe('the drawings', () => {
  it('lay an option over the present choice while it is pointed at, or when it is chosen to compare with', async () => {
    const { sheet, request } = await open();
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
    const { sheet } = await open();
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
    const { sheet } = await open({
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
