/** Ways to enter: pasted text, the other form of writing, help with measurements, and a frame that people own. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { foldEyes } from '../../src/configurator/foldEyes.ts';
import { quote } from '../../src/quote/quote.ts';
import { findAccessibilityFaults } from './accessibility.ts';
import { watchFaults } from './browser.ts';
import { browser, server } from './visit.ts';
import { field, openWorksheet, untilAlive, type WorksheetPage, worksheetOn } from './worksheetPage.ts';

const open = (frame = 'sanderling', options = {}) => openWorksheet(browser, server.origin, frame, options);

async function openOwn(options = {}): Promise<WorksheetPage> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const sheet = worksheetOn(await context.newPage(), server.origin);
  await sheet.page.goto(`${server.origin}/your-frame/`);
  await untilAlive(sheet.page);
  return sheet;
}

const textOf = (page: Page, name: string) => page.locator(field(name)).inputValue();
const textsOf = (page: Page, names: readonly string[]) =>
  Promise.all(names.map((name) => textOf(page, name)));

async function paste(page: Page, text: string): Promise<string> {
  if ((await page.locator('#ws-paste').count()) === 0)
    await page.getByText('Paste it as text instead').click();
  await page.locator('#ws-paste').fill(text);
  await page.getByRole('button', { name: 'Read it into the fields' }).click();
  await page.locator('.en-report').waitFor();
  return (await page.locator('.en-report').textContent()) ?? '';
}

const widthOver = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

describe('a pasted prescription', () => {
  it('with a typing error is read as far as it is understood, marked there, and mended', async () => {
    const { page, faults, ticket } = await open();
    const wrong = 'OD -2.25 -0.75 x 19O\nOS -2.00 -0.50 x 10\nPD 31.5/32';
    const told = await paste(page, wrong);
    expect(told).toContain('Right was not understood to its end');
    expect(await page.locator('.en-report mark').textContent()).toBe('19O');
    expect(await textsOf(page, ['right.sphere', 'left.sphere', 'left.axis', 'pd.right'])).toEqual([
      '',
      '\u22122.00',
      '10',
      '31.5',
    ]);
    expect(await findAccessibilityFaults(page)).toEqual([]);

    expect(await paste(page, wrong.replace('19O', '170'))).toContain('Right \u22122.25 \u22120.75 x 170');
    expect(await page.locator('.en-report mark').count()).toBe(0);
    expect(await textOf(page, 'right.axis')).toBe('170');
    await page.locator('.ws-lenses').getByText('\u22122.25 \u22120.75 \u00d7 170').waitFor();
    expect(await ticket()).not.toContain('An entry needs mending');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says what it replaced and emptied, and puts it back', async () => {
    const { page, typeAll } = await open();
    await typeAll({ 'right.sphere': '-1.00', 'right.add': '2.00', 'left.sphere': '+1.00' });
    const told = await paste(page, 'OD -2.00 DS');
    expect(told).toContain('Replaced: Right, Sphere -1.00.');
    expect(told).toContain('Emptied, since the text has nothing there: Right, Add 2.00.');
    expect(told).toContain('Left is not in the text');
    const names = ['right.sphere', 'right.add', 'left.sphere'];
    await expect.poll(() => textsOf(page, names)).toEqual(['\u22122.00', '', '+1.00']);
    await page.getByRole('button', { name: 'Put back what stood there before' }).click();
    await expect.poll(() => textsOf(page, names)).toEqual(['-1.00', '2.00', '+1.00']);
    await page.close();
  });

  it('for contact lenses is refused with the reason, and fills nothing', async () => {
    const { page, faults } = await open();
    const told = await paste(page, 'OD -2.25 BC 8.6 DIA 14.2\nOS -2.00 BC 8.6 DIA 14.2');
    expect(told).toContain('This is a prescription for contact lenses');
    expect(await page.locator('.en-report mark').allTextContents()).toEqual([
      'BC 8.6',
      'DIA 14.2',
      'BC 8.6',
      'DIA 14.2',
    ]);
    expect(await textsOf(page, ['right.sphere', 'left.sphere'])).toEqual(['', '']);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });
});

it('writes both eyes with the other cylinder and back to the letter, and orders the same', async () => {
  const { page, typeAll, ticket } = await open();
  const names = ['right.sphere', 'right.cylinder', 'right.axis', 'left.sphere', 'left.cylinder', 'left.axis'];
  const typed = ['-2,25', '-0.75', '170', '+1.125', '-0.375', '0'];
  await typeAll(Object.fromEntries(names.map((name, at) => [name, typed[at] ?? ''])));
  await typeAll({ 'pd.right': '31', 'pd.left': '32' });
  await page.locator('.ws-lenses').getByText('\u22122.25 \u22120.75 \u00d7 170').waitFor();
  await page.getByRole('button', { name: 'Write it with plus cylinders' }).click();
  await page.getByText('Written with plus cylinders').waitFor();
  await expect
    .poll(() => textsOf(page, names))
    .toEqual(['\u22123.00', '+0.75', '80', '+0.75', '+0.375', '90']);
  // The ticket writes minus cylinders whatever was entered.
  expect(await ticket()).toContain('\u22122.25 \u22120.75 \u00d7 170');
  await page.getByRole('button', { name: 'Write it with minus cylinders' }).click();
  await page.getByText('Written with minus cylinders').waitFor();
  expect(await textsOf(page, names)).toEqual(typed);
  await page.close();
});

it('tells what 1 mm of PD does with this power, the powers of the use, and where heights are measured', async () => {
  const { page, typeAll, choose, faults } = await open();
  await page.getByText('Once a power is entered').waitFor();
  await typeAll({ 'right.sphere': '-4.00', 'left.sphere': '+2.50', 'right.add': '2', 'left.add': '2' });
  // Prentice's rule: 0.1 cm times 4 D, and 0.1 cm times 2.5 D.
  await page.getByText('makes 0.40 \u0394 before the right eye and 0.25 \u0394 before the left').waitFor();
  await choose('use', 'near');
  await page.getByText('Ordered for reading, from your add: R\u00a0\u22122.00; L\u00a0+4.50.').waitFor();
  await page.getByText('makes 0.20 \u0394 before the right eye and 0.45 \u0394 before the left').waitFor();
  await typeAll({
    'pd.right': '31.5',
    'pd.left': '31.5',
    'fittingHeight.right': '21',
    'fittingHeight.left': '22',
  });
  await page.getByText('Where the heights are measured on this frame').click();
  const drawing = page.getByRole('img', { name: /^Where heights are measured on this frame, size/ });
  await drawing.waitFor();
  expect(await page.locator('#en-heights-s').textContent()).toContain('Right, pupil 21 mm above it.');
  expect(await findAccessibilityFaults(page)).toEqual([]);
  expect(faults).toEqual([]);
  await page.close();
});

describe('a frame that somebody owns', () => {
  it('is asked for first, drawn as measured, and answered as the engine answers', async () => {
    const { page, type, typeAll, choose, faults, ticket } = await openOwn();
    expect(await ticket()).toContain('The width of the lens is missing.');
    await typeAll({ 'right.sphere': '-3.25', 'left.sphere': '-2.75', 'pd.right': '31.5', 'pd.left': '32' });
    // Nothing is judged in a frame that nobody has described.
    await page.waitForTimeout(500);
    expect(await ticket()).not.toContain('Thickest edge');
    await type('own.a', '510');
    await page.locator(`${field('own.a')}[aria-invalid="true"]`).waitFor();
    await typeAll({ 'own.a': '51', 'own.b': '40', 'own.dbl': '19', 'own.ed': '80', faceForm: '6' });
    await page.locator('#ws-own-ed-told').getByText('ED from').waitFor();
    await type('own.ed', '');
    await choose('own.family', 'hexagon');
    await page.getByRole('img', { name: /^Your frame, drawn to scale/ }).waitFor();

    const lenses = await Promise.all(
      ['design', 'material', 'tint', 'coating'].map(async (name) => [
        name,
        await page.locator(`input[name="${name}"]:checked`).inputValue(),
      ]),
    );
    const reading = loadCatalogue('content');
    if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
    const date = await page.evaluate(
      (timeZone) => new Intl.DateTimeFormat('en-CA', { timeZone }).format(new Date()),
      reading.catalogue.shop.timeZone,
    );
    const reply = quote(reading.catalogue, {
      date,
      pairs: [
        {
          frame: { a: 51, b: 40, dbl: 19, family: 'hexagon', mounting: 'full' },
          wearer: 'adult',
          prescription: { right: { sphere: -3.25 }, left: { sphere: -2.75 } },
          fit: { pd: { right: 31.5, left: 32 }, faceForm: 6 },
          lenses: { use: 'distance', ...Object.fromEntries(lenses) },
        },
      ],
    });
    if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
    const { pairs, price } = reply.answer;
    await page
      .locator('.ws-total')
      .getByText(`$${(price.total / 100).toFixed(2)}`)
      .waitFor();
    const right = pairs[0]?.right;
    await page
      .locator('.ws-lenses')
      .getByText(`${right?.edgeThicknessMm.thickest.mm.toFixed(2)} mm`)
      .first()
      .waitFor();
    const told = await ticket();
    for (const { message } of foldEyes(reading.catalogue.words, pairs[0]?.findings ?? []))
      expect(told).toContain(message);
    for (const { label } of price.lines) expect(told).toContain(label);
    expect(price.lines.every(({ kind }) => kind !== 'frame')).toBe(true);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is linked from home and from the list of frames', async () => {
    const page = await browser.newPage();
    for (const path of ['/', '/frames/']) {
      await page.goto(server.origin + path);
      expect(await page.locator('main a[href="/your-frame/"]').count()).toBe(1);
    }
    await page.close();
  });
});

it.each(['/your-frame/', '/measuring-rule/'])('fits %s into 320 px, in the dark too', async (path) => {
  const context = await browser.newContext({ viewport: { width: 320, height: 700 }, colorScheme: 'dark' });
  const page = await context.newPage();
  const faults = watchFaults(page, server.origin);
  await page.goto(server.origin + path);
  if (path === '/your-frame/') {
    await untilAlive(page);
    for (const [name, text] of [
      ['own.a', '51'],
      ['own.b', '40'],
      ['own.dbl', '19'],
    ] as const)
      await page.locator(field(name)).fill(text);
    await page.getByRole('img', { name: /^Your frame, drawn to scale/ }).waitFor();
    await page.getByText('Where the heights are measured').click();
    await page.locator('.en-figure svg').waitFor();
    await paste(
      page,
      'OD -2.25 -0.75 x 19O and a long line that must not make the page any wider than it is',
    );
  }
  expect(await widthOver(page)).toBe(0);
  expect(await findAccessibilityFaults(page)).toEqual([]);
  expect(faults).toEqual([]);
  await context.close();
});

it('prints rules of which a millimetre is a millimetre, and a box as large as a bank card', async () => {
  const page = await browser.newPage({ viewport: { width: 720, height: 1000 } });
  await page.goto(`${server.origin}/measuring-rule/`);
  await page.emulateMedia({ media: 'print' });
  const sizes = await page.locator('.to-scale').evaluateAll((drawings) =>
    drawings.map((svg) => {
      const shape = svg.querySelector('rect, path') as SVGGraphicsElement;
      const { width, height } = shape.getBBox();
      const scale = svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width;
      // A CSS millimetre is 96 / 25.4 CSS pixels (CSS Values and Units).
      return [width, height].map((units) => Number(((units * scale * 25.4) / 96).toFixed(2)));
    }),
  );
  // ID-1 of ISO/IEC 7810: 85.60 by 53.98 mm.
  expect(sizes[0]).toEqual([85.6, 53.98]);
  expect([sizes[1]?.[0], sizes[2]?.[0], sizes[3]?.[1]]).toEqual([120, 90, 45]);
  await page.close();
});
