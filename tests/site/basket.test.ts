/** Comparing, links and the basket: whole journeys, each without a fault on the page and without one that axe finds. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { findAccessibilityFaults } from './accessibility.ts';
import { browser, server } from './visit.ts';
import { openWorksheet, untilAlive, type WorksheetPage, worksheetOn } from './worksheetPage.ts';

const MYOPE = {
  'right.sphere': '-3.25',
  'right.cylinder': '-0.75',
  'right.axis': '170',
  'left.sphere': '-2.75',
  'pd.right': '31.5',
  'pd.left': '32',
};

/** A choice by its value, also where the row of a list is folded. */
const choose = (page: Page, name: string, value: string) =>
  page.locator(`input[name="${name}"][value="${value}"]`).evaluate((box: HTMLInputElement) => box.click());

/** Presses a button on the ticket, opening it where it is a bar. */
async function act({ page }: WorksheetPage, name: RegExp): Promise<void> {
  const show = page.getByRole('button', { name: 'Show the whole ticket' });
  if (await show.isVisible()) await show.click();
  await page.locator('.sh').getByRole('button', { name }).click();
}

/** A worksheet with a prescription, in a window of its own. */
async function openMyope(frame: string, width = 1280): Promise<WorksheetPage> {
  const sheet = await openWorksheet(browser, server.origin, frame, { viewport: { width, height: 900 } });
  await sheet.typeAll(MYOPE);
  return sheet;
}

/** What is held in the tab and on the device. */
const held = (page: Page) =>
  page.evaluate(() => ({
    tab: Object.keys(sessionStorage).sort(),
    device: Object.keys(localStorage).sort(),
  }));

const values = async (page: Page, names: readonly string[]): Promise<Record<string, string>> => {
  const all = names.map(async (name): Promise<[string, string]> => {
    const chosen = page.locator(`input[name="${name}"]:checked`);
    const typed = page.locator(`input[name="${name}"]:not([type="radio"])`);
    return [name, await ((await chosen.count()) > 0 ? chosen : typed).inputValue()];
  });
  return Object.fromEntries(await Promise.all(all));
};

const CHOICES = ['size', 'colourway', 'use', 'design', 'material', 'tint', 'coating'] as const;

describe('a basket', () => {
  it('lets a pair be changed, copied for another wearer and removed, and is there again after a reload', async () => {
    const sheet = await openMyope('sanderling');
    const { page } = sheet;
    await act(sheet, /^Put into the basket/);
    await page.getByRole('link', { name: 'Go to the basket' }).click();
    await page.getByRole('button', { name: 'Copy for another wearer: pair 1' }).click();
    await page.getByText('Pair 2 is a copy without prescription').waitFor();
    await page.getByRole('article', { name: '2. Sanderling' }).getByText('This is still needed.').waitFor();
    await page.reload();
    await page.getByRole('link', { name: 'Change pair 2' }).click();
    await page.getByText('Pair 2 of your basket').waitFor();
    await page.getByRole('button', { name: 'All right' }).click();
    expect(await values(page, ['right.sphere', 'pd.right'])).toEqual({ 'right.sphere': '', 'pd.right': '' });
    await sheet.typeAll({ ...MYOPE, 'right.sphere': '-1.25', 'left.sphere': '-1.50' });
    await act(sheet, /^Put back as pair 2/);
    await page.getByText('Pair 2 was put back.').waitFor();
    await page.getByRole('link', { name: 'Go to the basket' }).click();
    await page.getByRole('article', { name: '2. Sanderling' }).getByText('We can make this pair').waitFor();
    await page.getByRole('button', { name: 'Remove pair 1' }).click();
    await page.getByRole('article', { name: '1. Sanderling' }).waitFor();
    expect(await page.locator('.bk-pair').count()).toBe(1);
    await page.getByRole('link', { name: 'Basket (1)' }).waitFor();
    expect(sheet.faults).toEqual([]);
    await page.context().close();
  });

  it('is in the tab alone until it is ticked, and nowhere once all is forgotten', async () => {
    const sheet = await openMyope('sanderling');
    const { page } = sheet;
    expect(await held(page)).toEqual({ tab: [], device: [] });
    await act(sheet, /^Set aside/);
    await act(sheet, /^Put into the basket/);
    await page.getByText('In the basket as pair 1.').waitFor();
    expect(await held(page)).toEqual({ tab: ['bevelbook.aside.1', 'bevelbook.basket.1'], device: [] });
    await page.getByLabel('Keep the basket on this device').check();
    await page.locator('#ws-keep').check();
    await expect
      .poll(() => held(page))
      .toEqual({ tab: [], device: ['bevelbook.aside.1', 'bevelbook.basket.1', 'bevelbook.worksheet.1'] });
    const again = await page.context().newPage();
    await again.goto(`${server.origin}/basket/`);
    await again.getByRole('article', { name: '1. Sanderling' }).waitFor();
    await again.getByRole('button', { name: 'Forget all' }).click();
    await again.getByRole('dialog').getByRole('button', { name: 'Forget all' }).click();
    await again.getByText('Everything was forgotten.').waitFor();
    await again.getByText('Nothing is in the basket of this tab.').waitFor();
    expect(await held(again)).toEqual({ tab: [], device: [] });
    expect(await findAccessibilityFaults(again)).toEqual([]);
    await page.context().close();
  });

  it('that cannot be read is said to be so, and dropped', async () => {
    const context = await browser.newContext();
    const sheet = worksheetOn(await context.newPage(), server.origin);
    await sheet.page.goto(`${server.origin}/basket/`);
    await sheet.page.evaluate(() => {
      for (const key of ['basket.1', 'aside.1', 'worksheet.1']) localStorage.setItem(`bevelbook.${key}`, '{');
    });
    await sheet.page.reload();
    await sheet.page.getByText('The basket that was kept could not be read.').waitFor();
    await sheet.page.goto(`${server.origin}/frames/sanderling/`);
    await untilAlive(sheet.page);
    await sheet.page.getByText('What was set aside could not be read.').waitFor();
    expect(await held(sheet.page)).toEqual({ tab: [], device: [] });
    expect(sheet.faults).toEqual([]);
    await context.close();
  });

  it.each([320, 390, 1280])('fits a window of %d px', async (width) => {
    const sheet = await openMyope('sanderling', width);
    await act(sheet, /^Put into the basket/);
    await sheet.page.getByText('In the basket as pair 1.').waitFor();
    await sheet.page.goto(`${server.origin}/basket/`);
    await sheet.page.locator('.bk-order').waitFor();
    expect(await sheet.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await findAccessibilityFaults(sheet.page)).toEqual([]);
    await sheet.page.context().close();
  });
});

describe('a link', () => {
  it.each([false, true])('opens the same package elsewhere (with the prescription: %s)', async (personal) => {
    const sheet = await openMyope('sanderling');
    const { page } = sheet;
    await choose(page, 'material', 'thiourethane-1-67');
    const chosen = await values(page, CHOICES);
    const total = await page.locator('.ws-total').textContent();
    const before = await page.evaluate(() => history.length);
    await act(sheet, /^Link to this pair/);
    const dialog = page.getByRole('dialog', { name: 'A link to this pair' });
    if (personal) await dialog.getByLabel('Put the prescription').check();
    const address = await dialog.getByLabel('The link', { exact: true }).inputValue();
    expect(address.includes('-3.25')).toBe(personal);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    // Nothing of it is in the address of the page that made it, nor in its history.
    expect([page.url(), await page.evaluate(() => history.length)]).toEqual([
      `${server.origin}/frames/sanderling/`,
      before,
    ]);

    const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
    const other = worksheetOn(await context.newPage(), server.origin);
    const asked: string[] = [];
    other.page.on('request', (request) => asked.push(request.url()));
    await other.page.goto(address);
    const told = other.page.getByRole('dialog', { name: 'From a link' });
    await told.getByText('Filled in: Size, Color').waitFor();
    expect(await values(other.page, CHOICES)).toEqual(chosen);
    const typed = await values(other.page, Object.keys(MYOPE));
    if (personal) {
      expect(typed).toEqual(MYOPE);
      await other.page.locator('.ws-total', { hasText: total?.replace('Total', '').trim() ?? '' }).waitFor();
      expect(other.page.url()).toBe(`${server.origin}/frames/sanderling/`);
    } else {
      expect(Object.values(typed).join('')).toBe('');
      await told.getByText('No prescription was in it.').waitFor();
    }
    // Browsers send no fragment; nothing else of the package reached the server either.
    expect(asked.filter((url) => new URL(url).search !== '' || url.includes('3.25'))).toEqual([]);
    expect(await held(other.page)).toEqual({ tab: [], device: [] });
    expect(await findAccessibilityFaults(other.page)).toEqual([]);
    expect([...sheet.faults, ...other.faults]).toEqual([]);
    await context.close();
    await page.context().close();
  });

  it('of strangers fills in what it can, and says what it left out', async () => {
    const context = await browser.newContext();
    const { page, faults } = worksheetOn(await context.newPage(), server.origin);
    const hostile = encodeURIComponent('"><img src=x onerror=alert(1)>');
    await page.goto(`${server.origin}/frames/sanderling/#p1;m=${hostile};u=near;zz=1;t=%E0;u=all`);
    const told = page.getByRole('dialog', { name: 'From a link' });
    await told.getByText('Filled in: What are they for.').waitFor();
    await told.getByText('“zz=1”: not known here').waitFor();
    await told.getByText('“t=%E0”: cannot be read').waitFor();
    await told.getByText('“u=all”: said twice').waitFor();
    await told.getByText('Material “"><img src=x onerror=alert(1)>”').waitFor();
    expect(await page.locator('input[name="use"]:checked').inputValue()).toBe('near');
    expect(faults).toEqual([]);
    await context.close();
  });
});

describe('a comparison', () => {
  it.each([1280, 390, 320])('of three packages fits %d px and one sheet of paper', async (width) => {
    const sheet = await openMyope('sanderling', width);
    const { page } = sheet;
    const hide = page.getByRole('button', { name: 'Hide', exact: true });
    for (const [count, material] of ['standard-plastic', 'polycarbonate', 'thiourethane-1-67'].entries()) {
      if (await hide.isVisible()) await hide.click();
      await choose(page, 'material', material);
      await act(sheet, /^Set aside/);
      await page.getByText(`Set aside, ${count + 1} of 3.`).waitFor();
    }
    await act(sheet, /^Compare \(3\)/);
    const dialog = page.getByRole('dialog', { name: 'Side by side' });
    await dialog
      .getByRole('columnheader', { name: /^C\. Sanderling/ })
      .getByText('On the worksheet now')
      .waitFor();
    await dialog.getByText('best').first().waitFor();
    await dialog.getByText('worst').first().waitFor();
    const wide = await dialog.evaluate((box) => box.scrollWidth - box.clientWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(await findAccessibilityFaults(page)).toEqual([]);
    for (const format of ['A4', 'Letter'] as const) {
      const sheetOfPaper = (await page.pdf({ format })).toString('latin1');
      expect(sheetOfPaper.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    }
    await dialog.getByRole('button', { name: 'Take away C' }).click();
    await expect.poll(() => dialog.getByRole('columnheader', { name: /^[ABC]\./ }).count()).toBe(2);
    await dialog.getByRole('button', { name: 'Put on the worksheet: A' }).click();
    await page.locator('input[name="material"][value="standard-plastic"]:checked').waitFor();
    expect(sheet.faults).toEqual([]);
    await page.context().close();
  });

  it('holds packages of several frames, and leads to the page of another with its package', async () => {
    const sheet = await openMyope('sanderling');
    const { page } = sheet;
    await act(sheet, /^Set aside/);
    await page.getByText('Set aside, 1 of 3.').waitFor();
    await page.goto(`${server.origin}/frames/knot/`);
    await untilAlive(page);
    await sheet.typeAll(MYOPE);
    await act(sheet, /^Set aside/);
    await page.getByText('Set aside, 2 of 3.').waitFor();
    await act(sheet, /^Compare \(2\)/);
    await page.getByRole('button', { name: 'Put on the worksheet: A' }).click();
    await page.getByRole('heading', { level: 1, name: 'Sanderling' }).waitFor();
    await expect.poll(() => values(page, ['right.sphere'])).toEqual({ 'right.sphere': '-3.25' });
    expect(sheet.faults).toEqual([]);
    await page.context().close();
  });
});
