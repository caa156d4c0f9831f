/** What was typed is not lost by leaving the page: the browser asks, links open beside, choices go along. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browser, server } from './visit.ts';
import { field, openWorksheet, untilAlive, type WorksheetPage } from './worksheetPage.ts';

const MYOPE = { 'right.sphere': '-3.25', 'left.sphere': '-2.75', 'pd.right': '31.5', 'pd.left': '32' };

const open = (frame: string, width = 1280): Promise<WorksheetPage> =>
  openWorksheet(browser, server.origin, frame, { viewport: { width, height: 800 } });

/** Whether the browser asks before the page is loaded again. */
async function asks(page: Page): Promise<boolean> {
  let asked = false;
  const answer = (dialog: { accept: () => Promise<void>; type: () => string }) => {
    asked = dialog.type() === 'beforeunload';
    void dialog.accept();
  };
  page.on('dialog', answer);
  await page.reload();
  await untilAlive(page);
  page.off('dialog', answer);
  return asked;
}

const beside = (page: Page) => page.locator('.ws-form .ws-beside');

describe('leaving a worksheet', () => {
  it('is asked about while a prescription is typed, and not once it is kept or emptied', async () => {
    const { page, type, typeAll, choose, faults } = await open('sanderling');
    await choose('wearer', 'child');
    expect(await asks(page)).toBe(false);
    await typeAll(MYOPE);
    await beside(page).first().waitFor({ state: 'attached' });
    expect(await asks(page)).toBe(true);
    await type('right.sphere', '-3.25');
    await beside(page).first().waitFor({ state: 'attached' });
    await type('right.sphere', '');
    expect(await asks(page)).toBe(false);
    await typeAll(MYOPE);
    await page.locator('#ws-keep').check();
    await type('pd.left', '31');
    expect(await asks(page)).toBe(false);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('is not asked about on the way to the basket, where the pair lies', async () => {
    const { page, typeAll, faults } = await open('sanderling');
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await typeAll(MYOPE);
    await page.locator('.sh').getByRole('button', { name: 'Put into the basket' }).click();
    await page.getByRole('link', { name: 'Go to the basket' }).click();
    await page.getByRole('article', { name: '1. Sanderling' }).waitFor();
    await page.getByRole('link', { name: 'Change pair 1' }).click();
    await page.getByRole('button', { name: 'All right' }).click();
    await page.getByRole('link', { name: 'Basket (1)' }).click();
    await page.waitForURL('**/basket/');
    expect(asked).toEqual([]);
    await page.goBack();
    await page.getByRole('button', { name: 'All right' }).click();
    await page.locator(field('right.sphere')).fill('-4');
    await beside(page).first().waitFor({ state: 'attached' });
    await page.getByRole('link', { name: 'Basket (1)' }).click();
    await page.waitForURL('**/basket/');
    expect(asked).toEqual(['beforeunload']);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('is not needed for explanations: their links say that they open beside it, and do', async () => {
    const { page, type, faults } = await open('sanderling');
    const how = page.locator('.ws-form a[href="/measuring/"]');
    expect(await how.getAttribute('target')).toBeNull();
    await type('right.sphere', '-3.25');
    await page.getByRole('link', { name: '(opens in a new tab)' }).first().waitFor();
    const [opened] = await Promise.all([page.waitForEvent('popup'), how.click()]);
    await opened.waitForURL('**/measuring/');
    expect(await page.locator(field('right.sphere')).inputValue()).toBe('-3.25');
    await type('right.sphere', '');
    expect(await page.getByRole('link', { name: '(opens in a new tab)' }).count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('for the other language takes the choices along, and asks because of the prescription', async () => {
    const { page, type, faults } = await open('sanderling');
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    const material = page.locator('input[name="material"]:not(:checked)').first();
    const chosen = await material.inputValue();
    await material.evaluate((box: HTMLInputElement) => box.click());
    await type('right.sphere', '-3.25');
    await beside(page).first().waitFor({ state: 'attached' });
    await page.locator('a[data-language="fr-CA"]').click();
    await page.waitForURL(`**/fr/frames/sanderling/#p1;m=${chosen}`);
    await page.locator('#sh-opened').waitFor();
    expect(await page.locator('.sh-opened').textContent()).toContain(
      'Vos choix ont suivi, pas l’ordonnance.',
    );
    const covered = await page.evaluate(() => {
      const notice = document.querySelector('.sh-opened')?.getBoundingClientRect();
      const form = document.querySelector('#worksheet-root')?.getBoundingClientRect();
      return notice === undefined || form === undefined || notice.bottom > form.top;
    });
    expect(covered).toBe(false);
    expect(asked).toEqual(['beforeunload']);
    expect(await page.locator('input[name="material"]:checked').inputValue()).toBe(chosen);
    expect(await page.locator(field('right.sphere')).inputValue()).toBe('');
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

it('takes what was entered to the frame of a way out where one says so, without a question', async () => {
  const { page, type, faults } = await open('avocet');
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.type());
    void dialog.accept();
  });
  for (const eye of ['right', 'left']) {
    await type(`${eye}.sphere`, '-12');
    await type(`pd.${eye}`, '29');
    await type(`fittingHeight.${eye}`, '21');
  }
  await type('vertexTested', '12');
  const going = page.getByRole('link', { name: 'with what I entered' });
  await going.waitFor();
  expect(await going.getAttribute('href')).not.toContain('#');
  await going.click();
  await page.locator('#sh-opened').getByText('Carried along').waitFor();
  const { pathname, hash } = new URL(page.url());
  expect(pathname).not.toBe('/frames/avocet/');
  expect(hash).toBe('');
  expect(await page.locator(field('right.sphere')).inputValue()).toBe('-12');
  expect(await page.locator(field('pd.left')).inputValue()).toBe('29');
  expect(await page.locator(field('fittingHeight.right')).inputValue()).toBe('');
  expect(asked).toEqual([]);
  await page.locator('.ws-verdict').getByText('We can make this pair').first().waitFor();
  expect(faults).toEqual([]);
  await page.context().close();
});

it('takes what was entered in the list along to a frame on its tick alone, and out of the address at once', async () => {
  const page = await browser.newPage();
  const sent: string[] = [];
  page.on('request', (request) => sent.push(`${request.url()} ${request.postData() ?? ''}`));
  const enter = async () => {
    await page.goto(`${server.origin}/frames/`);
    await page.locator('.fl-entry > summary').click();
    for (const [name, text] of Object.entries(MYOPE)) await page.locator(field(name)).fill(text);
    await page.locator('.fl-count').getByText('a pair can be made').waitFor();
  };
  const link = page.getByRole('link', { name: 'Sanderling' });
  const sphere = page.locator(field('right.sphere'));
  await enter();
  await link.click();
  await page.waitForURL('**/frames/sanderling/');
  await untilAlive(page);
  expect(await sphere.inputValue()).toBe('');
  await enter();
  await page.getByLabel('Take what I entered along').check();
  expect(await link.getAttribute('href')).toBe('/frames/sanderling/');
  await link.click();
  await page.locator('#sh-opened').waitFor();
  expect(page.url()).toBe(`${server.origin}/frames/sanderling/`);
  expect(await sphere.inputValue()).toBe('-3.25');
  expect(await page.locator(field('pd.left')).inputValue()).toBe('32');
  expect(sent.filter((request) => /3[.,]25|31[.,]5/.test(request.split('#')[0] ?? ''))).toEqual([]);
  expect(await page.evaluate(() => localStorage.length + sessionStorage.length)).toBe(0);
  await page.close();
});

it('at 390 px never hides the field with the focus under the ticket, also after the ticket was opened', async () => {
  const { page, typeAll, faults } = await open('sanderling', 390);
  await typeAll(MYOPE);
  await page.locator('.ws-lenses').waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Show the whole ticket' }).click();
  await page.locator(field('right.sphere')).evaluate((one) => one.focus({ preventScroll: true }));
  const covered: string[] = [];
  for (let stop = 0; stop < 40; stop++) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(async () => {
      // Two frames: the page brings it out from under the bar in the first.
      for (let i = 0; i < 3; i++) await new Promise(requestAnimationFrame);
      const at = document.activeElement;
      const bar = document.querySelector('#ws-ticket')?.getBoundingClientRect();
      const box = at?.getBoundingClientRect();
      if (!at || !bar || !box || at.closest('#ws-ticket')) return null;
      return box.bottom > bar.top && box.top < bar.bottom ? `${at.id} ${at.outerHTML.slice(0, 80)}` : null;
    });
    if (found !== null) covered.push(found);
  }
  expect(covered).toEqual([]);
  expect(await page.getByRole('button', { name: 'Show the whole ticket' }).count()).toBe(1);
  expect(faults).toEqual([]);
  await page.context().close();
});
