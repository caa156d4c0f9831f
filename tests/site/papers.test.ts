import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { papersOf, printable } from '../../src/workroom/papers.ts';
import { crowdedJob, crowdedOptions } from '../workroom/crowded.ts';
import { jobOfPairs, PAIRS, type PairName, shop } from '../workroom/jobs.ts';
import { openBrowser } from './browser.ts';

const LONG = 'Wilhelmina-Konstantina \u00dcberschw\u00e4nglich von und zu Hohenasperg '.repeat(30);
const names = Object.keys(PAIRS) as PairName[];

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
});

/** Papers to print: empty and filled in, honest and overfull. */
function allPapers() {
  const groups: PairName[][] = [...names.map((name) => [name]), names];
  return groups.flatMap((group) => {
    const job = jobOfPairs(...group);
    const full = [LONG, 'W'.repeat(2000)].flatMap((text) => {
      const crowded = crowdedJob(job, text);
      return [
        ...papersOf(crowded, shop, crowdedOptions(job, text)),
        ...papersOf(crowded, shop, { price: 'shown' }),
      ];
    });
    return [...papersOf(job, shop), ...full];
  });
}

it('prints every paper to one page of A4 and of US Letter, with nothing cut off', async () => {
  const papers = allPapers();
  const page = await browser.newPage();
  await page.setContent(printable(papers, 'Papers', 'en'));
  await page.emulateMedia({ media: 'print' });
  const overfull = await page.$$eval('.paper', (sheets) =>
    sheets.flatMap((sheet) => {
      const { right } = sheet.getBoundingClientRect();
      const wide = [...sheet.querySelectorAll('*')].some(
        (one) => one.getBoundingClientRect().right > right + 1,
      );
      const high = sheet.scrollHeight > sheet.clientHeight + 1;
      return wide || high ? [sheet.getAttribute('data-paper')] : [];
    }),
  );
  expect(overfull).toEqual([]);
  for (const format of ['A4', 'Letter'] as const) {
    const pdf = await page.pdf({ format, preferCSSPageSize: false });
    const count = Math.max(
      ...[...pdf.toString('latin1').matchAll(/\/Count (\d+)/g)].map(([, n]) => Number(n)),
    );
    expect(count, format).toBe(papers.length);
  }
  await page.close();
});

it('draws a millimetre as a millimetre', async () => {
  const page = await browser.newPage();
  await page.setContent(printable(papersOf(jobOfPairs('single'), shop), 'Papers', 'en'));
  await page.emulateMedia({ media: 'print' });
  const widthMm = (selector: string) =>
    page.locator(selector).evaluate((drawn: SVGGraphicsElement) => {
      const scale = drawn.getScreenCTM()?.a ?? 0;
      return (drawn.getBBox().width * scale) / (96 / 25.4);
    });
  expect(await widthMm('.rule svg path')).toBeCloseTo(100, 1);
  expect(await widthMm('.blank >> nth=0')).toBeCloseTo(70, 1);
  await page.close();
});
