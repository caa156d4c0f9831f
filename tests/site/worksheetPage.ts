/** A worksheet in the browser as the tests use it: what a visitor types, chooses and reads. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { watchFaults } from './browser.ts';

export interface WorksheetPage {
  readonly page: Page;
  /** What went wrong on the page so far. */
  readonly faults: readonly string[];
  /** Types into a field by its name, such as `right.sphere`, and leaves it. */
  readonly type: (field: string, text: string) => Promise<void>;
  readonly typeAll: (texts: Readonly<Record<string, string>>) => Promise<void>;
  /** Chooses a radio button by its field and value. */
  readonly choose: (field: string, value: string) => Promise<void>;
  /** Waits until the ticket's total is this text. */
  readonly untilTotal: (text: string) => Promise<void>;
  readonly ticket: () => Promise<string>;
}

/** Selector of a field's element. */
export const field = (name: string): string => `[id="ws-${name.replaceAll('.', '-')}"]`;

/** Watches a page with a worksheet on it. */
export function worksheetOn(page: Page, origin: string): WorksheetPage {
  const type = async (name: string, text: string) => {
    await page.locator(field(name)).fill(text);
    await page.locator(field(name)).blur();
  };
  return {
    page,
    faults: watchFaults(page, origin),
    type,
    typeAll: async (texts) => {
      for (const [name, text] of Object.entries(texts)) await type(name, text);
    },
    choose: (name, value) => page.locator(`input[name="${name}"][value="${value}"]`).check(),
    untilTotal: (text) => page.locator('.ws-total').getByText(text).waitFor(),
    ticket: async () => ((await page.locator('#ws-ticket').textContent()) ?? '').replace(/\s+/g, ' '),
  };
}

/** Opens a frame's page and waits until its worksheet answers. */
export async function openWorksheet(
  browser: Browser,
  origin: string,
  frame: string,
  options: BrowserContextOptions = {},
): Promise<WorksheetPage> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const sheet = worksheetOn(await context.newPage(), origin);
  await sheet.page.goto(`${origin}/frames/${frame}/`);
  await untilAlive(sheet.page);
  return sheet;
}

/** Brings the worksheet into the window and waits for its script. */
export async function untilAlive(page: Page): Promise<void> {
  await page.locator('#worksheet-root').scrollIntoViewIfNeeded();
  // The list of countries is complete once the script runs.
  await page.locator('[id="ws-destination"] optgroup').waitFor({ state: 'attached' });
}
