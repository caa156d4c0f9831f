/** The order page in the browser as the tests use it: a basket to order, a shop that seals and takes posts. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { watchFaults } from './browser.ts';

/** Where the shop of these tests takes orders; nothing of it leaves the machine. */
export const POST_TO = 'https://orders.example/in';

interface Terms {
  readonly publicKeys?: readonly string[];
  readonly delivery?: readonly string[];
}

/** Serves the built page as that of a shop with other terms of ordering; the policy as the build would write it. */
export async function asShopWith(page: Page, terms: Terms): Promise<void> {
  await page.route('**/order/', async (route) => {
    const response = await route.fetch();
    const html = (await response.text()).replace(
      /(<script id="order-data"[^>]*>)(.*?)(<\/script>)/s,
      (_, start: string, json: string, end: string) => {
        const data = JSON.parse(json);
        Object.assign(data.shop.order, terms, { postTo: POST_TO });
        return start + JSON.stringify(data).replaceAll('<', '\\u003c') + end;
      },
    );
    await route.fulfill({
      response,
      body: html.replace("connect-src 'self'", `connect-src 'self' ${POST_TO}`),
    });
  });
}

interface HeldPair {
  readonly frame: string;
  readonly entries: Readonly<Record<string, string>>;
}

/** The order page of these pairs in a window of its own, once it has its answer. */
export async function openOrder(
  browser: Browser,
  origin: string,
  pairs: readonly HeldPair[],
  { terms, ...options }: BrowserContextOptions & { readonly terms?: Terms } = {},
): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const faults = watchFaults(page, origin);
  await page.goto(`${origin}/measuring-rule/`);
  const basket = { pairs: pairs.map((pair, at) => ({ id: at + 1, ...pair })), terms: {} };
  await page.evaluate((text) => sessionStorage.setItem('bevelbook.basket.1', text), JSON.stringify(basket));
  if (terms !== undefined) await asShopWith(page, terms);
  await page.goto(`${origin}/order/`);
  await page.locator('.or-form').waitFor();
  return { page, faults };
}

/** Fills in what the first pair, the buyer and the shop's sentences ask for. */
export async function fillIn(page: Page): Promise<void> {
  await page.getByLabel('Name of the person who will wear it').first().fill('Ada Marsh');
  await page.getByLabel('Date on the prescription').first().fill('2026-06-01');
  await page.getByLabel('Who prescribed').first().fill('Dr Wren');
  await page.getByLabel('Who took the measurements').first().selectOption('optician');
  await fillInBuyer(page);
}

/** Fills in what the buyer and the shop's sentences ask for, after which nothing may be missing. */
export async function fillInBuyer(page: Page): Promise<void> {
  await page.getByLabel('Your name', { exact: true }).fill('Ada Marsh');
  await page.getByLabel('Postal address').fill('4 Tide Street\nMerriwick, Maine 04000');
  await page.getByLabel('E-mail').fill('ada@mail.example');
  for (const box of await page.locator('.or-form [type="checkbox"]').all()) await box.check();
  await page.getByLabel('Invoice').check();
  await page.getByText('Nothing is missing.').waitFor();
}
