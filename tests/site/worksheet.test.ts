/** From home to a priced pair: the worksheet answers as the command line does. */
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import type { RunningServer } from '../../src/commands/serve.ts';
import { foldEyes } from '../../src/configurator/foldEyes.ts';
import { writeLens } from '../../src/configurator/write.ts';
import type { Answer } from '../../src/quote/answer.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { openBrowser } from './browser.ts';
import { builtShop, serveShop } from './server.ts';
import { untilAlive, type WorksheetPage, worksheetOn } from './worksheetPage.ts';

let server: RunningServer;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'worksheet-'));
  [server, browser] = await Promise.all([serveShop(), openBrowser()]);
});

afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await browser?.close();
  await server?.close();
});

const root = builtShop.replace(/[\\/]dist$/, '');

const reading = loadCatalogue('content');
const words = reading.ok ? reading.catalogue.words : {};

/** What `npm run -s quote` prints for a request; a refusal ends with status 2 and is an answer too. */
function quoted(request: unknown): Promise<Answer> {
  const file = join(folder, 'request.json');
  writeFileSync(file, JSON.stringify(request));
  return new Promise((resolve, reject) => {
    execFile(process.execPath, ['src/commands/quote.ts', file], { cwd: root }, (error, output) => {
      if (error && error.code !== 2) reject(error);
      else resolve(JSON.parse(output));
    });
  });
}

const dollars = (minor: number) =>
  new Intl.NumberFormat('en', { style: 'currency', currency: 'USD' })
    .format(minor / 100)
    .replace('-', '\u2212');

/** Walks from home over the list of frames to the worksheet of a frame. */
async function walkTo(model: string): Promise<WorksheetPage> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const sheet = worksheetOn(page, server.origin);
  await page.goto(`${server.origin}/`);
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'Frames' }).click();
  await page
    .getByRole('heading', { name: new RegExp(`^${model}`) })
    .getByRole('link')
    .click();
  await page.getByRole('heading', { level: 1, name: model }).waitFor();
  await untilAlive(page);
  return sheet;
}

/** Compares a settled ticket with an answer: verdict, findings, figures, every line and the total. */
async function expectSame(sheet: WorksheetPage, answer: Answer, verdict: string): Promise<void> {
  await sheet.untilTotal(dollars(answer.price.total));
  await sheet.page.locator('.ws-sentence').getByText(verdict).waitFor();
  const ticket = await sheet.ticket();
  const [pair] = answer.pairs;
  if (pair === undefined) throw new Error('The answer has no pair.');
  const shown = await sheet.page.locator('.ws-finding > p:last-of-type').allTextContents();
  expect(shown.map((text) => text.trim())).toEqual(
    foldEyes(words, pair.findings).map(({ message }) => message),
  );
  for (const lens of [pair.right, pair.left])
    if (lens !== null)
      for (const figure of [
        writeLens(lens.ordered),
        `${lens.edgeThicknessMm.thickest.mm.toFixed(2)} mm`,
        `${lens.edgeThicknessMm.thinnest.mm.toFixed(2)} mm`,
        `${lens.centreThicknessMm.toFixed(2)} mm`,
        `${lens.massG.toFixed(1)} g`,
        `needs ${lens.blank.neededMm.toFixed(2)} mm`,
      ])
        expect(ticket).toContain(figure);
  const labels = await sheet.page.locator('.ws-price tbody th').allTextContents();
  const amounts = await sheet.page.locator('.ws-price tbody td').allTextContents();
  expect(labels.map((label, at) => [label, amounts[at]])).toEqual(
    answer.price.lines.map(({ label, amount }) => [label, dollars(amount)]),
  );
}

describe('the worksheet', () => {
  it('prices -3.25 -0.75 x 170 in a 51-19 full rim as the command line does', async () => {
    const sheet = await walkTo('Sanderling');
    await sheet.choose('size', '51-19');
    await sheet.choose('colourway', 'kelp');
    await sheet.typeAll({
      'right.sphere': '-3.25',
      'right.cylinder': '-0.75',
      'right.axis': '170',
      'left.sphere': '-2.75',
      'pd.right': '31.5',
      'pd.left': '32',
      vertexTested: '12',
      issued: '2026-06-01',
    });
    await sheet.choose('material', 'thiourethane-1-60');
    await sheet.choose('coating', 'anti-reflective');
    const answer = await quoted({
      frame: 'sanderling',
      size: '51-19',
      colourway: 'kelp',
      prescription: {
        right: { sphere: -3.25, cylinder: -0.75, axis: 170 },
        left: { sphere: -2.75 },
        vertexDistance: 12,
        issued: '2026-06-01',
      },
      fit: { pd: { right: 31.5, left: 32 } },
      lenses: {
        use: 'distance',
        design: 'single-vision',
        material: 'thiourethane-1-60',
        tint: 'clear',
        coating: 'anti-reflective',
      },
    });
    expect(answer.verdict).not.toBe('refused');
    await expectSame(sheet, answer, 'We can make this pair');
    expect(await findAccessibilityFaults(sheet.page)).toEqual([]);
    expect(sheet.faults).toEqual([]);
    await sheet.page.close();
  });

  it('refuses the long corridor for +5.50 add +2.25 in a shallow frame, with figures, and takes the short one', async () => {
    const sheet = await walkTo('Dunlin');
    const base = {
      frame: 'dunlin',
      prescription: {
        right: { sphere: 5.5, add: 2.25 },
        left: { sphere: 5.5, add: 2.25 },
        vertexDistance: 12,
      },
      fit: { pd: { right: 31, left: 31 }, fittingHeight: { right: 17, left: 17 } },
    };
    const colourway = await sheet.page.locator('input[name="colourway"]:checked').inputValue();
    await sheet.choose('size', '50-19');
    await sheet.choose('use', 'all');
    await sheet.typeAll({
      'right.sphere': '+5.50',
      'right.add': '2.25',
      'left.sphere': '+5,50',
      'left.add': '+2.25',
      'pd.right': '31',
      'pd.left': '31',
      'fittingHeight.right': '17',
      'fittingHeight.left': '17',
      vertexTested: '12',
    });
    await sheet.choose('material', 'thiourethane-1-67');
    await sheet.choose('tint', 'clear');
    await sheet.choose('coating', 'anti-reflective');
    await sheet.choose('design', 'progressive-long');
    const lenses = { use: 'all', material: 'thiourethane-1-67', tint: 'clear', coating: 'anti-reflective' };
    const long = await quoted({
      ...base,
      size: '50-19',
      colourway,
      lenses: { ...lenses, design: 'progressive-long' },
    });
    expect(long.verdict).toBe('refused');
    await expectSame(sheet, long, 'We cannot make this pair as it stands.');
    // Declared for the design: 22 mm of fitting height, against 17 mm measured.
    const row = sheet.page.locator('.ws-option', {
      has: sheet.page.locator('input[value="progressive-long"]'),
    });
    await row.getByText('does not fit').waitFor();
    await row
      .getByText('needs a fitting height of 22 mm. Yours is 17 mm in this frame, 5 mm too little')
      .first()
      .waitFor();
    await sheet.choose('design', 'progressive-short');
    const short = await quoted({
      ...base,
      size: '50-19',
      colourway,
      lenses: { ...lenses, design: 'progressive-short' },
    });
    expect(short.verdict).toBe('care');
    await expectSame(sheet, short, 'We can make this pair, with care.');
    expect(await findAccessibilityFaults(sheet.page)).toEqual([]);
    expect(sheet.faults).toEqual([]);
    await sheet.page.close();
  });

  it('prices a sun pair without power as the command line does', async () => {
    const sheet = await walkTo('Tern');
    await sheet.choose('use', 'none');
    await sheet.choose('tint', 'polarised-grey');
    await sheet.type('codes', 'nosuchcode');
    await sheet.page.locator('[id="ws-destination"]').selectOption('DE');
    const value = (name: string) => sheet.page.locator(`input[name="${name}"]:checked`).inputValue();
    const answer = await quoted({
      destination: 'DE',
      codes: ['nosuchcode'],
      frame: 'tern',
      size: await value('size'),
      colourway: await value('colourway'),
      prescription: null,
      lenses: {
        use: 'none',
        design: await value('design'),
        material: await value('material'),
        tint: 'polarised-grey',
        coating: await value('coating'),
      },
    });
    await expectSame(
      sheet,
      answer,
      answer.verdict === 'care' ? 'We can make this pair, with care.' : 'We can make this pair.',
    );
    await sheet.page.getByText('This shop has no code nosuchcode').waitFor();
    expect(await findAccessibilityFaults(sheet.page)).toEqual([]);
    expect(sheet.faults).toEqual([]);
    await sheet.page.close();
  });
});
