/** The workroom's page: from sealed files to printed papers, and what it makes of everything else. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningServer } from '../../src/commands/serve.ts';
import { orderBytes } from '../../src/order/makeOrder.ts';
import { makeKeys } from '../../src/order/seal.ts';
import { loose } from '../order/orders.ts';
import type { PairName } from '../workroom/jobs.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { openBrowser } from './browser.ts';
import { builtShop, serveShop } from './server.ts';
import {
  asOrdered,
  fileOf,
  inspect,
  numberOf,
  openWorkroom,
  orderFor,
  type SentFile,
  sealedFile,
} from './workroomPage.ts';

const [mine, other] = await Promise.all([makeKeys(), makeKeys()]);
const KINDS = ['single', 'progressive', 'bifocal', 'sun'] as const satisfies readonly PairName[];
const shown = (seed: number) => numberOf(seed).replace(/(\d{4})(?=\d)/g, '$1-');

let server: RunningServer;
let browser: Browser;
let files: readonly SentFile[];
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bevelbook-workroom-'));
  [server, browser] = await Promise.all([serveShop(), openBrowser()]);
  files = await Promise.all(
    KINDS.map((kind, at) => sealedFile(`${kind}.json.age`, orderFor([kind], at + 1), mine.recipient)),
  );
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

it('is linked from nowhere, left out by search engines, and may connect to nothing', () => {
  const html = readFileSync(join(builtShop, 'workroom/index.html'), 'utf8');
  expect(html).toContain('<meta name="robots" content="noindex, nofollow">');
  const policy = html.indexOf("connect-src 'none'");
  expect(policy).toBeGreaterThan(0);
  expect(policy).toBeLessThan(html.indexOf('<script'));
  const others = readdirSync(builtShop, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => /\.(?:html|xml|txt)$/.test(name) && !name.startsWith('workroom/'));
  expect(others).toContain('sitemap.xml');
  expect(others.filter((name) => readFileSync(join(builtShop, name), 'utf8').includes('/workroom'))).toEqual(
    [],
  );
});

describe('sealed orders', () => {
  it('open with the right key alone, and are forgotten when the page is locked', async () => {
    const room = await openWorkroom(browser, server.origin);
    const { page } = room;
    await room.pick(files);
    await room.summary('waiting for a key: 4');
    await room.giveKey(`${mine.identity}x`);
    await page.getByText('The private key in line 1 has a typing error.').waitFor();
    await room.giveKey(other.identity);
    await page.getByText('The file is sealed to another key.').first().waitFor();
    await room.giveKey(mine.identity);
    await room.summary('Opened: 4,');
    expect(await page.getByText('Every line is the same.').count()).toBe(1);
    await page.getByLabel('Search by number or name').fill('ada m');
    expect(await page.locator('.wr-jobs > li').count()).toBe(4);
    await page.getByLabel('Search by number or name').fill(shown(3).slice(0, 9));
    expect(await page.locator('.wr-jobs > li').count()).toBe(1);
    await page.getByRole('button', { name: 'Lock' }).click();
    await page.getByText('Sealed files that wait for a key: 4.').waitFor();
    expect(await page.locator('body').textContent()).not.toContain('Ada');
    expect(await page.getByLabel('Private key of the workshop').inputValue()).toBe('');
    expect(await page.evaluate(() => Object.keys(localStorage).length)).toBe(0);
    expect(room.asked).toEqual([]);
    expect(room.faults).toEqual([]);
    await room.context.close();
  });

  it('are opened, chosen and worked on by keyboard', async () => {
    const room = await openWorkroom(browser, server.origin);
    const { page } = room;
    await room.pick(files.slice(0, 2));
    await page.getByLabel('Private key of the workshop').focus();
    await page.keyboard.insertText(mine.identity);
    await page.keyboard.press('Enter');
    await room.summary('Opened: 2,');
    await page.locator('button.wr-job', { hasText: shown(2) }).focus();
    await page.keyboard.press('Enter');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe(`Order ${shown(2)}`);
    expect(room.faults).toEqual([]);
    await room.context.close();
  });
});

describe('the check sheet on screen', () => {
  it('tells a price that was changed, line by line, and asks for a call', async () => {
    const made = loose(orderFor(['single'], 1));
    const [line] = made.shown.price.lines;
    made.shown.price.total -= line.amount - 100;
    line.amount = 100;
    const room = await openWorkroom(browser, server.origin);
    await room.pick([fileOf('order.json', orderBytes(made))]);
    await room.summary('Opened: 1,');
    const { page } = room;
    await page.getByRole('row', { name: `${line.label} $1.00 $149.00` }).waitFor();
    await page.getByText('The price is another than the one that was shown.').waitFor();
    await page.getByText('The file was not sealed. Whoever saw it could read it.').waitFor();
    expect(room.asked).toEqual([]);
    await room.context.close();
  });
});

describe('an inspection', () => {
  it.each(KINDS)(
    'of a %s pair passes as ordered, in either form of cylinder, and fails by one figure',
    async (kind) => {
      const room = await openWorkroom(browser, server.origin);
      const { page } = room;
      await room.pick([fileOf('order.json', orderBytes(orderFor([kind], 1)))]);
      await room.summary('Opened: 1,');
      await inspect(page, asOrdered(kind, true));
      const verdict = page.locator('.wr-result > [role="status"]');
      await expect.poll(() => verdict.textContent()).toContain('The pair passes.');
      await page.locator('#wr-0-right-sphere').fill('-9');
      await expect.poll(() => verdict.textContent()).toContain('The pair does not pass.');
      await page
        .getByText(/Power, Right: the lens is off; order it again. Beyond its limit by [\d.]+ D\./)
        .waitFor();
      await page.locator('#wr-0-right-sphere').fill('a lot');
      await page.getByText('“a lot” is not a number. Expected a number from -40 to 40 D.').waitFor();
      await page.getByText('The result waits until these are corrected: Sphere, Right.').waitFor();
      expect(await page.getByText('Still to enter').count()).toBe(0);
      expect(await verdict.count()).toBe(0);
      await page.locator('#wr-0-right-sphere').fill('-9');
      await page.getByRole('button', { name: 'Keep this inspection and begin another' }).click();
      await page.getByText(/M\. Tern The pair does not pass\./).waitFor();
      expect(await page.locator('#wr-0-right-sphere').inputValue()).toBe('');
      expect(room.faults).toEqual([]);
      await room.context.close();
    },
  );
});

describe('papers', () => {
  it('show what was entered, and print to a page each', async () => {
    const room = await openWorkroom(browser, server.origin);
    const { page } = room;
    await room.pick([fileOf('order.json', orderBytes(orderFor(KINDS, 1)))]);
    await room.summary('Opened: 1,');
    await inspect(page, asOrdered('single'));
    await page.getByLabel('Paid, USD').fill('12,50');
    await page.getByText('Expected an amount such as 19.00.').waitFor();
    await page.getByLabel('Paid, USD').fill('12.50');
    await page.getByLabel('Paid on').fill('2026-11-25');
    await page.getByLabel('Paid how').fill('bank transfer');
    await page.getByRole('button', { name: 'Show: Itemized receipt' }).click();
    const receipt = page.frameLocator('.wr-paper').locator('.paper');
    await receipt.getByText('Paid $12.50 on November 25, 2026, bank transfer.').waitFor();
    expect(await receipt.evaluate((paper) => getComputedStyle(paper).display)).toBe('flex');
    await page.evaluate(() => {
      const real = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow');
      Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', {
        get() {
          const inside = real?.get?.call(this) as Window;
          inside.print = () => document.body.setAttribute('data-printed', inside.document.body.innerHTML);
          return inside;
        },
      });
    });
    await page.getByRole('button', { name: 'Print all papers as one' }).click();
    await page.locator('body[data-printed]').waitFor();
    const html = (await page.locator('.wr-printed').getAttribute('srcdoc')) ?? '';
    expect(await page.locator('.wr-printed').getAttribute('sandbox')).toBe('allow-same-origin allow-modals');
    expect(html).toMatch(/Inspected by M\. Tern on [A-Z][a-z]+ \d+, \d{4}\./);
    const paper = await room.context.newPage();
    await paper.setContent(html);
    const count = html.split('<article').length - 1;
    expect(count).toBe(4 + 5 * KINDS.length);
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = await paper.pdf({ format });
      if (process.env['BEVELBOOK_PAPERS'])
        writeFileSync(`${process.env['BEVELBOOK_PAPERS']}/${format}.pdf`, pdf);
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(count);
    }
    const [record] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Lens order of pair 2 as text' }).click(),
    ]);
    expect(readFileSync(await record.path(), 'utf8')).toContain('SPH=-1.50;-2.00\r\n');
    expect(room.asked).toEqual([]);
    expect(room.faults).toEqual([]);
    await room.context.close();
  });
});

describe('what is kept', () => {
  it('is sealed files and progress, by choice; it goes out, is deleted for good, and comes back in', async () => {
    const room = await openWorkroom(browser, server.origin);
    const { page } = room;
    const reload = async () => {
      await page.reload();
      await page.getByRole('heading', { name: 'Order files' }).waitFor();
    };
    await page.getByLabel('Keep sealed files and progress in this browser').check();
    await room.giveKey(mine.identity);
    await room.pick(files.slice(0, 1));
    await room.summary('Opened: 1,');
    await page.locator('#wr-next-by').fill('MT');
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('Lenses ordered, ').waitFor();
    await page.getByLabel('Remark to the supplier').fill('Grind it thin.');
    await page.getByText('Make it again, with the reason').click();
    expect(
      await page.locator('#wr-reason, #wr-eye').evaluateAll((all) => all.map((one) => one.matches(':valid'))),
    ).toEqual([false, false]);
    await page.locator('#wr-reason').selectOption('Power of the lens');
    await page.locator('#wr-eye').selectOption('Right');
    await page.getByRole('button', { name: 'Begin again from the lenses' }).click();
    await page.getByRole('row', { name: 'Power of the lens 1 100' }).waitFor();
    // What was typed is sealed once typing pauses.
    await page.waitForTimeout(1200);
    await reload();
    await page.getByText(shown(1)).first().waitFor();
    await page.getByText('Sealed files that wait for a key: 1.').waitFor();
    expect(await page.locator('body').textContent()).not.toContain('Ada');
    await room.giveKey(mine.identity);
    await room.summary('Opened: 1,');
    expect(await page.getByLabel('Remark to the supplier').inputValue()).toBe('Grind it thin.');
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save all as one file' }).click(),
    ]);
    const bundle = readFileSync(await saved.path());
    expect(bundle.toString()).not.toContain('Ada');
    expect(bundle.toString()).toContain('"lens-power"');
    await page.getByRole('button', { name: 'Delete everything…' }).click();
    await page.getByRole('button', { name: 'Delete for good' }).click();
    await page.getByText('Nothing yet. Open an order file.').waitFor();
    await reload();
    await page.getByText('Nothing yet. Open an order file.').waitFor();
    const kept = await page.evaluate(async () => {
      const request = indexedDB.open('bevelbook-workroom');
      await new Promise((done) => request.addEventListener('success', done));
      const all = request.result.transaction('kept').objectStore('kept').getAllKeys();
      await new Promise((done) => all.addEventListener('success', done));
      return [...all.result, ...Object.keys(localStorage)];
    });
    expect(kept).toEqual([]);
    const bringIn = (bytes: Buffer) =>
      page.getByLabel('Bring in a saved file').setInputFiles([fileOf('kept.jsonl', bytes)]);
    await bringIn(bundle.subarray(0, bundle.length - 9));
    await page.getByText('Nothing of it was taken.').first().waitFor();
    expect(await page.locator('.wr-jobs').count()).toBe(0);
    await bringIn(bundle);
    await page.getByText('Brought in. Sealed files: 1, jobs: 1.').first().waitFor();
    await room.giveKey(mine.identity);
    await room.summary('Opened: 1,');
    await page.getByRole('button', { name: 'Delete this order…' }).click();
    await page.getByRole('button', { name: 'Delete for good' }).click();
    await page.getByText('Nothing yet. Open an order file.').waitFor();
    expect(room.faults).toEqual([]);
    await room.context.close();
  });

  it('is the page itself for a place without a network', async () => {
    const room = await openWorkroom(browser, server.origin);
    await room.context.setOffline(true);
    await room.page.reload();
    await room.page.getByRole('heading', { name: 'Order files' }).waitFor();
    await room.giveKey(mine.identity);
    await room.pick(files.slice(0, 1));
    await room.summary('Opened: 1,');
    const stored = await room.page.evaluate(async () => {
      const names = await caches.keys();
      const stores = await Promise.all(names.map((name) => caches.open(name)));
      return (await Promise.all(stores.map((store) => store.keys()))).flat().map(({ url }) => url);
    });
    expect(stored.filter((url) => !/\/workroom\/$|\/_astro\/|favicon/.test(url))).toEqual([]);
    await room.context.close();
  });
});

describe('files that are no honest order', () => {
  it('are each refused in a sentence, and the rest is opened', async () => {
    const room = await openWorkroom(browser, server.origin);
    const { page } = room;
    await room.giveKey(mine.identity);
    const good = orderBytes(orderFor(['single'], 1));
    const nasty = '<img src=x onerror="alert(1)"><script>alert(1)</script>';
    const html = loose(orderFor(['single'], 2));
    html.buyer = { name: nasty, lines: [nasty], email: nasty, phone: nasty };
    html.notes = nasty;
    html.pairs[0].wearer = nasty;
    html.pairs[0].prescription.written = nasty;
    html.shown.price.lines[0].label = nasty;
    const [sealed] = files;
    const bent = Buffer.from(sealed?.buffer ?? []);
    bent[bent.length - 20] = (bent[bent.length - 20] ?? 0) ^ 1;
    const future = { ...loose(orderFor(['single'], 3)), 'bevelbook-order': 99 };
    await room.pick([
      fileOf('cut.json', good.subarray(0, 900)),
      fileOf('bent.age', bent),
      await sealedFile('strangers.age', orderFor(['single'], 4), other.recipient),
      fileOf('packed.zip', new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])),
      fileOf('future.json', JSON.stringify(future)),
      fileOf('empty.json', ''),
      fileOf(`${nasty}.json`, 'no'),
      fileOf('html.json', orderBytes(html)),
      fileOf('good.json', good),
      fileOf('again.json', good),
    ]);
    await room.summary('Files: 10. Opened: 2, came twice: 1, waiting for a key: 0, refused: 7.');
    for (const [name, sentence] of [
      ['cut.json', 'The file ends in the middle.'],
      ['bent.age', 'it is damaged or was changed since'],
      ['strangers.age', 'sealed to another key'],
      ['packed.zip', 'This is a packed archive.'],
      ['future.json', 'The order is of version 99'],
      ['empty.json', 'The file is empty.'],
      [nasty, 'The file is not JSON'],
    ] as const)
      await page.locator('.wr-told li', { hasText: name }).getByText(sentence).waitFor();
    await room.choose(shown(2));
    await page.getByRole('heading', { name: shown(2) }).waitFor();
    for (const show of await page.getByRole('button', { name: /^Show: / }).all()) {
      await show.click();
      expect(await page.locator('.wr-paper').getAttribute('srcdoc')).not.toMatch(/<img|<script/);
    }
    expect(await page.locator('img').count()).toBe(0);
    expect(room.faults).toEqual([]);
    await room.context.close();
  });

  it('may be a thousand at once, or 200 MB large', async () => {
    const room = await openWorkroom(browser, server.origin);
    const [text] = [new TextDecoder().decode(orderBytes(orderFor(['single'], 1)))];
    const many = Array.from({ length: 1000 }, (_, at) =>
      fileOf(`${at}.json`, at % 200 === 0 ? text.replaceAll(numberOf(1), numberOf(at / 200 + 1)) : '{'),
    );
    await room.pick(many);
    await room.summary('Files: 1000. Opened: 5, came twice: 0, waiting for a key: 0, refused: 995.');
    const large = join(folder, 'large.json');
    writeFileSync(large, '{');
    truncateSync(large, 200_000_000);
    await room.pick(large);
    await room.page.getByText('The file has 200.0 MB; an order file has at most 20.0 MB.').waitFor();
    expect(room.faults).toEqual([]);
    await room.context.close();
  });
});

it.each([
  ['320 px', { viewport: { width: 320, height: 700 } }],
  ['390 px, dark', { viewport: { width: 390, height: 844 }, colorScheme: 'dark' as const }],
  ['1280 px, forced colors', { viewport: { width: 1280, height: 900 }, forcedColors: 'active' as const }],
])('fits a window of %s without a fault that axe finds', async (_, options) => {
  const room = await openWorkroom(browser, server.origin, options);
  const { page } = room;
  await room.pick([fileOf('order.json', orderBytes(orderFor(['bifocal'], 1))), fileOf('bad.json', '{')]);
  await room.summary('Opened: 1,');
  await inspect(page, asOrdered('bifocal'));
  await page.getByText('Make it again, with the reason').click();
  await page.getByRole('button', { name: 'Show: Lens record' }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
    options.viewport.width,
  );
  expect(await findAccessibilityFaults(page)).toEqual([]);
  expect(room.faults).toEqual([]);
  await room.context.close();
});
