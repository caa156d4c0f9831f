/**
 * A small shop built twice below a path: the same to the last byte, every link within the path, no cost in any file, and
 * the promotions of the shop's own day wherever in the world its page is opened.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, serveFolder } from '../../src/commands/serve.ts';
import { writeSmallShop } from '../fixtures/smallShop.ts';
import { openBrowser, watchFaults } from './browser.ts';
import { crawl } from './crawl.ts';
import { field, untilAlive } from './worksheetPage.ts';

const folder = fileURLToPath(new URL('../../.cache/under-base', import.meta.url));
const BASE = '/some/shop/';
const site = join(folder, 'host', BASE);
const again = join(folder, 'again');

/** Costs that no price, measure or digest is likely to hold. */
const COSTS = ['4815162', '7342108', '9027364', '6180339', '5772156'];
const decimal = (minor: string) => `${minor.slice(0, -2)}.${minor.slice(-2)}`;

let server: RunningServer;
let browser: Browser;

function build(out: string): void {
  const options = ['--shop', join(folder, 'content'), '--out', out, '--base', BASE, '--date', '2026-11-25'];
  const run = spawnSync(process.execPath, ['src/commands/astro.ts', 'build', ...options], {
    encoding: 'utf8',
    // A site built under the name of a test has no worker for the workroom's page.
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (run.status !== 0) throw new Error(run.stdout + run.stderr);
}

beforeAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeSmallShop(join(folder, 'content'));
  const [frame, colourway, option, stock, work] = COSTS.map(decimal);
  const costs = [
    `frames: { dunlin: { cost: "${frame}", colourways: { mudflat: "${colourway}" } } }`,
    `coatings: { hard: "${option}" }`,
    `materials: { standard-plastic: { cost: "1.00", stock: { standard-70: "${stock}" } } }`,
    `work: "${work}"`,
  ];
  writeFileSync(join(folder, 'costs.yaml'), `${costs.join('\n')}\n`);
  build(site);
  build(again);
  [server, browser] = await Promise.all([serveFolder(join(folder, 'host')), openBrowser()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

function filesOf(root: string): Map<string, Buffer> {
  const names = readdirSync(root, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    names
      .map((entry) => join(entry.parentPath, entry.name))
      .toSorted()
      .map((path) => [path.slice(root.length), readFileSync(path)]),
  );
}

const powers = { 'right.sphere': '-2.00', 'left.sphere': '-2.00', 'pd.right': '32', 'pd.left': '32' };

describe('a shop below a path of its host', () => {
  it('is built the same twice, to the last byte', () => {
    const [one, other] = [filesOf(site.replace(/\/$/, '')), filesOf(again)];
    expect([...one.keys()]).toEqual([...other.keys()]);
    const differing = [...one].filter(([name, bytes]) => other.get(name)?.equals(bytes) !== true);
    expect(differing.map(([name]) => name)).toEqual([]);
  });

  it('answers every link, and none leads out of the path', async () => {
    const { faults, pages, visited } = await crawl(server.origin, BASE);
    expect(faults).toEqual([]);
    expect(pages.size).toBeGreaterThan(20);
    expect([...visited].filter((path) => !path.startsWith(BASE))).toEqual([]);
  });

  it('tells others its address with the path', () => {
    const html = readFileSync(join(site, 'frames/dunlin/index.html'), 'utf8');
    expect(html).toContain('<link rel="canonical" href="https://shop.example/some/shop/frames/dunlin/"');
  });

  it('holds no cost, however it may be written', () => {
    const forms = COSTS.map((minor) => {
      const [thousands, units, cents] = [minor.slice(0, -5), minor.slice(-5, -2), minor.slice(-2)];
      return new RegExp(`${thousands}\\D{0,6}${units}(?:\\D{0,2}${cents}|\\D)`);
    });
    expect(forms.every((form, at) => form.test(decimal(COSTS[at] as string)))).toBe(true);
    const telling = [...filesOf(site.replace(/\/$/, ''))].filter(([name, bytes]) => {
      const text = `${bytes.toString('latin1')} `;
      return !/\.(?:png|webp|avif|jpg)$/.test(name) && forms.some((form) => form.test(text));
    });
    expect(telling.map(([name]) => name)).toEqual([]);
  });

  it('judges a pair with its worker and its data', async () => {
    const page = await browser.newPage();
    const faults = watchFaults(page, server.origin);
    await page.goto(`${server.origin}${BASE}frames/dunlin/`);
    await untilAlive(page);
    for (const [name, text] of Object.entries(powers)) {
      await page.locator(field(name)).fill(text);
      await page.locator(field(name)).blur();
    }
    await page.locator('.ws-total').first().waitFor();
    await page.locator('#ws-ticket').getByText(/mm/).first().waitFor();
    await page.close();
    expect(faults).toEqual([]);
  });

  it('lists, and leads on, by scripts too', async () => {
    const page = await browser.newPage();
    const faults = watchFaults(page, server.origin);
    await page.goto(`${server.origin}${BASE}frames/`);
    await page.locator('.fl-entry > summary').click();
    for (const [name, text] of Object.entries(powers)) await page.locator(field(name)).fill(text);
    await page.locator('.fl-count').getByText('a pair can be made').waitFor();
    await page.goto(`${server.origin}${BASE}basket/`);
    const links = page.locator('#basket-root a[href]');
    await links.first().waitFor();
    const hrefs = await links.evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? ''));
    expect(hrefs.filter((href) => href.startsWith('/') && !href.startsWith(BASE))).toEqual([]);
    await page.close();
    expect(faults).toEqual([]);
  });
});

describe("the workroom's page below a path", () => {
  it('is kept for a place without a network, by a worker that answers for itself alone', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(`${server.origin}${BASE}workroom/`);
    await page.locator('#workroom-offline').waitFor();
    await context.setOffline(true);
    await page.reload();
    await page.getByRole('heading', { name: 'Order files' }).waitFor();
    const known = await page.evaluate(async () => {
      const scopes = (await navigator.serviceWorker.getRegistrations()).map(({ scope }) => scope);
      const stores = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
      const kept = (await Promise.all(stores.map((store) => store.keys()))).flat();
      return { scopes, kept: kept.map(({ url }) => url) };
    });
    expect(known.scopes).toEqual([`${server.origin}${BASE}workroom/`]);
    expect(known.kept.length).toBeGreaterThan(3);
    expect(known.kept.filter((url) => !url.startsWith(`${server.origin}${BASE}`))).toEqual([]);
    await context.close();
  });
});

describe('the day on which a promotion ends', () => {
  // Harbor month ends with 5 December 2026 in New York: at 05:00 UTC on the 6th.
  it.each(['Pacific/Auckland', 'Europe/Berlin', 'America/Los_Angeles'])(
    'is that of the shop, seen from %s',
    async (zone) => {
      const context = await browser.newContext({ timezoneId: zone });
      // The page was made for 25 November, when it ran: its script has to take it away.
      for (const [instant, state] of [
        ['2026-12-06T04:59:58Z', 'attached'],
        ['2026-12-06T05:00:01Z', 'detached'],
      ] as const) {
        const page = await context.newPage();
        await page.clock.setFixedTime(new Date(instant));
        await page.goto(`${server.origin}${BASE}frames/sanderling/`);
        await untilAlive(page);
        await page
          .locator('#ws-ticket')
          .getByText('15 % off a Harbor frame')
          .waitFor({ state, timeout: 10_000 });
        await page.close();
      }
      await context.close();
    },
  );
});
