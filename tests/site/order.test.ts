/** Ordering: from a frame's page to a file that the workroom opens, and all that can go wrong on the way. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningServer } from '../../src/commands/serve.ts';
import { readOrder } from '../../src/order/readOrder.ts';
import { makeKeys } from '../../src/order/seal.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { openBrowser } from './browser.ts';
import { asShopWith, fillIn, openOrder, POST_TO } from './orderPage.ts';
import { serveShop } from './server.ts';
import { openWorksheet } from './worksheetPage.ts';

let server: RunningServer;
let browser: Browser;
const folder = mkdtempSync(join(tmpdir(), 'bevelbook-order-'));
const keys = await makeKeys();

beforeAll(async () => {
  [server, browser] = await Promise.all([serveShop(), openBrowser()]);
});

afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await browser?.close();
  await server?.close();
});

const MYOPE = {
  'right.sphere': '-3.25',
  'right.cylinder': '-0.75',
  'right.axis': '170',
  'left.sphere': '-2.75',
  'pd.right': '31.5',
  'pd.left': '32',
};
const ONE = [{ frame: 'sanderling', entries: MYOPE }];
const MARKUP = '<img src="x" onerror="alert(1)"><b>bold</b>';
// PNG specification, section 5.2: the eight bytes of the signature
const PNG = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10, 0]);

const state = (page: Page) => page.locator('.or-state');
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

/** Saves the order, and gives the path of the file that the browser wrote. */
async function save(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await press(page, 'Save the file');
  const file = await download;
  const path = join(folder, file.suggestedFilename());
  await file.saveAs(path);
  return path;
}

/** The `age` program of the system; where it is not installed, our own reader alone opens the file. */
const program = process.env['AGE'] ?? 'age';
const hasProgram = spawnSync(program, ['--version']).status === 0;

describe('an order', () => {
  it('goes from a frame to a sealed file that the workroom and the age program open', async () => {
    const { page, faults, typeAll } = await openWorksheet(browser, server.origin, 'sanderling');
    await typeAll(MYOPE);
    await page
      .locator('.sh')
      .getByRole('button', { name: /^Put into the basket/ })
      .click();
    await page.getByRole('link', { name: 'Go to the basket' }).click();
    await asShopWith(page, { publicKeys: [keys.recipient] });
    await page.getByRole('link', { name: 'Order these pairs' }).click();
    await page.getByText('The file is sealed in your browser.').waitFor();
    await press(page, 'Save the file');
    await state(page).getByText('No file was made').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Still missing: \d+$/);
    await page.getByRole('link', { name: 'Pair 1: Who took the measurements?' }).click();
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
    await page.getByLabel('Date on the prescription').fill('2026-06-01');
    await page.getByLabel('Who prescribed').fill('Dr Wren');
    await page.getByLabel('As it is written', { exact: true }).fill('OD -3.25 -0.75 x 170\nOS -2.75 DS');
    const files = page.getByLabel('Picture or PDF of the prescription');
    await files.setInputFiles([
      { name: 'paper.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('<svg onload="alert(1)">') },
      { name: 'paper.png', mimeType: 'image/png', buffer: PNG },
    ]);
    await page.getByText('paper.jpg: This is neither a picture').waitFor();
    await page.getByRole('button', { name: 'Remove paper.png' }).waitFor();
    await fillIn(page);
    const path = await save(page);
    const bytes = readFileSync(path);
    const read = await readOrder(new Uint8Array(bytes), { identities: [keys.identity] });
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    expect(read).toMatchObject({
      sealed: true,
      order: {
        buyer: { name: 'Ada Marsh', lines: ['4 Tide Street', 'Merriwick, Maine 04000'] },
        request: { pairs: [{ prescription: { right: { sphere: -3.25, axis: 170 }, issued: '2026-06-01' } }] },
        pairs: [
          {
            measuredBy: 'optician',
            prescription: {
              written: 'OD -3.25 -0.75 x 170\nOS -2.75 DS',
              attachments: [{ name: 'paper.png', type: 'image/png' }],
            },
          },
        ],
      },
    });
    const total = await page.locator('.or-form .ws-price tfoot td').textContent();
    expect(total).toBe(`$${(read.order.shown.price.total / 100).toFixed(2)}`);
    await page.locator('.or-qr').waitFor();
    expect((await page.locator('.or-slip').textContent())?.replaceAll(' ', '')).toContain(read.digest);
    expect((await page.pdf()).toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    if (hasProgram) {
      const key = join(folder, 'key.txt');
      writeFileSync(key, `${keys.identity}\n`);
      const opened = spawnSync(program, ['-d', '-i', key, path]).stdout;
      expect(JSON.parse(opened.toString('utf8'))).toEqual(read.order);
    }
    expect(await findAccessibilityFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('that fails to be posted says so, keeps its number, arrives once, and tells a change', async () => {
    const terms = { delivery: ['post', 'save'], publicKeys: [keys.recipient] };
    const { page } = await openOrder(browser, server.origin, ONE, { terms });
    const sent: string[] = [];
    const answers = ['abort', 500, 200, 200] as const;
    await page.route(POST_TO, async (route) => {
      sent.push(route.request().postDataBuffer()?.toString('latin1') ?? '');
      const status = answers[sent.length - 1];
      const headers = { 'access-control-allow-origin': '*' };
      await (typeof status === 'number' ? route.fulfill({ status, headers }) : route.abort());
    });
    await fillIn(page);
    const send = () => press(page, 'Send the order to Merriwick Optical Workshop');
    await page.waitForLoadState('networkidle');
    await page.context().setOffline(true);
    await send();
    await state(page).getByText('This device is offline. Nothing has been sent').waitFor();
    await save(page);
    await page.context().setOffline(false);
    await send();
    await state(page).getByText('gave no answer, so the order may not have arrived').waitFor();
    await send();
    await state(page).getByText('it answered 500').waitFor();
    await send();
    await state(page).getByText('The order arrived').waitFor();
    await send();
    await state(page).getByText('It was not sent twice').waitFor();
    expect(sent).toHaveLength(3);
    for (const body of sent) {
      expect(body.match(/Content-Disposition/g)).toHaveLength(1);
      expect(body).toMatch(/name="order"; filename="order-\d{4}-\d{4}-\d{4}\.json\.age"/);
    }
    await page.getByLabel('Anything else we should know').fill('The case in blue');
    await state(page).getByText('You have changed the order since').waitFor();
    await send();
    await state(page).getByText('You have changed').waitFor({ state: 'detached' });
    const names = sent.map((body) => /filename="([^"]+)"/.exec(body)?.[1]);
    expect([names.length, new Set(names).size]).toEqual([4, 1]);
    expect(await page.getByLabel('Your name', { exact: true }).inputValue()).toBe('Ada Marsh');
    await page.context().close();
  });
});

describe('what is typed', () => {
  it.each([
    ['at once', 1, 0],
    ['at 5 ms a key', 1, 5],
    ['at 5 ms a key on a device six times slower', 6, 5],
  ] as const)('keeps every letter that comes %s', async (_, rate, delay) => {
    const { page } = await openOrder(browser, server.origin, ONE);
    const device = await page.context().newCDPSession(page);
    await device.send('Emulation.setCPUThrottlingRate', { rate });
    const texts = {
      '#or-name': 'Mia Doe',
      '#or-address': '4 Tide St\nPortland',
      '#or-email': 'mia@mail.example',
    };
    for (const [field, text] of Object.entries(texts))
      await page.locator(field).pressSequentially(text, { delay });
    const found = Object.keys(texts).map((field) => page.locator(field).inputValue());
    expect(await Promise.all(found)).toEqual(Object.values(texts));
    await page.context().close();
  });

  it('is shown as text, asked about before it is lost, kept once ticked, and forgotten', async () => {
    const { page, faults } = await openOrder(browser, server.origin, ONE);
    const fields = page.locator('.or-form :is(input[type="text"], textarea)');
    for (const field of await fields.all()) await field.fill(MARKUP);
    await page.getByLabel('E-mail').fill(`${MARKUP}@mail.example`);
    await page.getByLabel('Telephone').fill(MARKUP);
    await page.getByText('This is no telephone number').waitFor();
    await page.getByText(`Sanderling, for ${MARKUP}`).waitFor();
    expect(await page.locator('main :is(img, b)').count()).toBe(0);
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    expect(await page.evaluate(() => Object.keys(sessionStorage))).toEqual(['bevelbook.basket.1']);
    await page.locator('#or-keep').check();
    await page.reload();
    expect(asked).toEqual([]);
    expect(await page.getByLabel('Your name', { exact: true }).inputValue()).toBe(MARKUP);
    await page.locator('#or-keep').uncheck();
    await page.reload();
    expect(asked).toEqual(['beforeunload']);
    await page.getByLabel('Your name', { exact: true }).fill('Ada');
    await page.locator('#or-keep').check();
    await press(page, 'Forget all');
    await page.getByRole('dialog').getByRole('button', { name: 'Forget all' }).click();
    await page.getByText('Everything was forgotten.').waitFor();
    expect(await page.evaluate(() => [sessionStorage.length, localStorage.length])).toEqual([0, 0]);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe('the page of an order', () => {
  const pairs = [
    ...ONE,
    {
      frame: 'knot',
      entries: {
        ...MYOPE,
        use: 'all',
        'right.add': '2',
        'left.add': '2',
        'right.prism1.amount': '1',
        'right.prism1.base': 'in',
        'fittingHeight.right': '22',
        'fittingHeight.left': '22',
      },
    },
    { frame: 'sanderling', entries: { ...MYOPE, 'right.sphere': '-28' } },
    { frame: 'dodo', entries: MYOPE },
  ];

  it.each([
    [320, 'dark'],
    [390, 'light'],
    [1280, 'dark'],
  ] as const)(
    'fits %d px in %s, also with a pair that cannot be made and one that is gone',
    async (width, colorScheme) => {
      const viewport = { width, height: 900 };
      const { page, faults } = await openOrder(browser, server.origin, pairs, { viewport, colorScheme });
      await page.getByRole('heading', { name: '4. A frame that is no longer here' }).waitFor();
      await page.getByRole('link', { name: /^Pair 3: This pair cannot be made/ }).waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await findAccessibilityFaults(page)).toEqual([]);
      // The frame that is gone has no data.
      expect(faults.filter((fault) => !/dodo|404/.test(fault))).toEqual([]);
      await page.context().close();
    },
  );

  it('lets the browser connect nowhere else, and says how else to order where scripts are off', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${server.origin}/order/`);
    const policy = await page.locator('meta[http-equiv="content-security-policy"]').getAttribute('content');
    expect(policy).toContain("connect-src 'self';");
    await page.locator('main a[href="mailto:bench@shop.example"]').waitFor();
    await context.close();
  });
});
