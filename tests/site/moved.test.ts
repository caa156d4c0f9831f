/** A frame whose id has changed: its old address, links to it and pairs in a basket lead to it. */
import { expect, it } from 'vitest';
import { BASKET_KEY } from '../../src/configurator/keeping/heldKeys.ts';
import { watchFaults } from './browser.ts';
import { browser, server } from './visit.ts';

/** The demo's Whimbrel was called so. */
const OLD = '/frames/hexagon/';
const NEW = '/frames/whimbrel/';

it('opens under its new address, without a script too', async () => {
  for (const javaScriptEnabled of [true, false]) {
    const context = await browser.newContext({ javaScriptEnabled });
    const page = await context.newPage();
    const faults = watchFaults(page, server.origin);
    await page.goto(server.origin + OLD);
    await page.waitForURL(server.origin + NEW);
    expect(await page.locator('h1').textContent()).toBe('Whimbrel');
    expect(faults).toEqual([]);
    await context.close();
  }
});

it('says itself where it has gone, and is no page for search engines', async () => {
  const html = await (await fetch(server.origin + OLD)).text();
  expect(html).toContain('<meta name="robots" content="noindex"');
  expect(html).toMatch(/<link rel="canonical" href="https:\/\/shop\.example\/frames\/whimbrel\/"/);
  expect(html).toMatch(/<a [^>]*href="\/frames\/whimbrel\/"/);
});

it('takes along the package of a link', async () => {
  const page = await browser.newPage();
  await page.goto(`${server.origin}${OLD}#p1;z=50-20;y=copper`);
  await page.waitForURL((url) => url.pathname === NEW);
  await page.locator('.sh-opened').getByText('From a link').waitFor();
  expect(await page.locator('input[name="colourway"][value="copper"]').isChecked()).toBe(true);
  await page.close();
});

it('is priced in a basket that knows it by its old id, and opened from there', async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const basket = { pairs: [{ id: 1, frame: 'hexagon', entries: { size: '50-20' } }], terms: {}, given: 1 };
  await page.addInitScript(
    ([key, text]) => {
      if (key !== undefined && text !== undefined) sessionStorage.setItem(key, text);
    },
    [BASKET_KEY, JSON.stringify(basket)],
  );
  await page.goto(`${server.origin}/basket/`);
  await page.getByText('Whimbrel').first().waitFor();
  await page.locator(`main a[href="${OLD}#pair-1"]`).first().click();
  await page.waitForURL((url) => url.pathname === NEW);
  await page.locator('.sh-opened').waitFor();
  await context.close();
});
