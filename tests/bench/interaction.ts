/**
 * Prints what a visitor feels in the browser on a processor slowed down four times, for each thing that is done: the
 * longest task of the page's thread by its processor time, so that what else runs on this machine does not count; the
 * slowest answer to an entry by the clock; and how far the page shifts, at once and later than half a second after the
 * last entry. Needs a built shop. Run: `node tests/bench/interaction.ts`; `frame` or `list` and a width measure less.
 */
import type { CDPSession, Page } from 'playwright-core';
import { openBrowser } from '../site/browser.ts';
import { serveShop } from '../site/server.ts';
import { field, untilAlive } from '../site/worksheetPage.ts';
import { longestTaskMs, startTasks } from './browser/tasks.ts';
import { type Felt, watchFeelings } from './browser/watchFeelings.ts';

const SLOWER = 4;
/** Longer than the rest before options are judged, and the judging, ms. */
const SETTLE_MS = 2500;
const EMPTY: Felt = { event: 0, shift: 0, lateShift: 0, moved: [], focusMovedPx: 0 };

interface Visit {
  readonly page: Page;
  /** Does one thing, lets the page settle, and prints what was felt. */
  readonly feel: (name: string, act: () => Promise<unknown>) => Promise<void>;
}

function visiting(page: Page, cdp: CDPSession): Visit {
  const felt = () => page.evaluate(() => (globalThis as unknown as { felt: Felt }).felt);
  const reset = () =>
    page.evaluate((empty) => {
      Object.assign((globalThis as unknown as { felt: Felt }).felt, empty);
    }, EMPTY);
  const feel: Visit['feel'] = async (name, act) => {
    await reset();
    const tasks = await startTasks(cdp);
    await act();
    await page.waitForTimeout(SETTLE_MS);
    const longest = longestTaskMs(await tasks.end());
    const { event, shift, lateShift, moved, focusMovedPx } = await felt();
    const where = shift + lateShift < 0.001 ? '' : `  ${[...new Set(moved)].join(', ')}`;
    console.log(
      `  ${name.padEnd(26)} task ${longest.toFixed(0).padStart(4)} ms, event ${event.toFixed(0).padStart(4)} ms, shift` +
        ` ${shift.toFixed(4)}, later ${lateShift.toFixed(4)}, field ${focusMovedPx.toFixed(0)} px${where}`,
    );
  };
  return { page, feel };
}

const only = process.argv.slice(2);
const server = await serveShop();
const browser = await openBrowser();

async function visit(path: string, width: number): Promise<Visit> {
  const context = await browser.newContext({ viewport: { width, height: width < 500 ? 800 : 900 } });
  const page = await context.newPage();
  await page.addInitScript(watchFeelings);
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await page.goto(`${server.origin}${path}`);
  return visiting(page, cdp);
}

async function frame(width: number): Promise<void> {
  console.log(`a frame's page, ${width} px wide`);
  const { page, feel } = await visit('/frames/sanderling/', width);
  await feel('load', () => page.waitForTimeout(500));
  await feel('come to life', () => untilAlive(page));
  const keys = (name: string, text: string) => async () => {
    await page.locator(field(name)).click();
    for (const sign of text) {
      await page.keyboard.type(sign);
      await page.waitForTimeout(120);
    }
  };
  const pick = (name: string, value: string) => () =>
    page.locator(`input[name="${name}"][value="${value}"]`).check();
  await feel('sphere right', keys('right.sphere', '-3.25'));
  await feel('sphere left', keys('left.sphere', '-2.75'));
  await feel('pd right', keys('pd.right', '31.5'));
  await feel('pd left', keys('pd.left', '32'));
  await feel('a digit less', async () => {
    await page.locator(field('right.sphere')).click();
    await page.keyboard.press('End');
    await page.keyboard.press('Backspace');
  });
  // By keys: what a program fills in counts as no entry, and all that it moves as moved late.
  await feel('a high sphere', async () => {
    await page.locator(field('right.sphere')).click();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('-11.50');
  });
  await feel('material', pick('material', 'thiourethane-1-67'));
  await feel('coating', pick('coating', 'anti-reflective'));
  await feel('size', () => page.locator('input[name="size"]:not(:checked)').first().check());
  await feel('use: all', pick('use', 'all'));
  await feel('add', keys('right.add', '2.00'));
  await feel('into the basket', async () => {
    const show = page.locator('.ws-toggle');
    if (await show.isVisible()) await show.click();
    await page
      .locator('#ws-ticket')
      .getByRole('button', { name: /basket/i })
      .first()
      .click();
  });
  await page.context().close();
}

async function list(width: number): Promise<void> {
  console.log(`the list of frames, ${width} px wide`);
  const { page, feel } = await visit('/frames/', width);
  await feel('load', () => page.waitForTimeout(500));
  const select = (id: string, index: number) => () => page.locator(`#${id}`).selectOption({ index });
  await feel('order', select('fl-order', 1));
  await feel('open filters', () => page.locator('.fl-filters > summary').click());
  await feel('mounting', select('fl-mounting', 1));
  await feel('any mounting', select('fl-mounting', 0));
  await feel('colour', select('fl-colour', 1));
  await feel('any colour', select('fl-colour', 0));
  await feel('open prescription', () => page.locator('.fl-entry > summary').click());
  const put = (name: string, text: string) => () => page.locator(field(name)).fill(text);
  await feel('sphere right', put('right.sphere', '-3.25'));
  await feel('sphere left', put('left.sphere', '-3.25'));
  await feel('pd right', put('pd.right', '31.5'));
  await feel('pd left', put('pd.left', '32'));
  await page.context().close();
}

try {
  for (const width of [1280, 390].filter((one) =>
    only.every((text) => !/\d/.test(text) || Number(text) === one),
  )) {
    if (!only.includes('list')) await frame(width);
    if (!only.includes('frame')) await list(width);
  }
} finally {
  await browser.close();
  await server.close();
}
