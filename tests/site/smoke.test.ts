import { existsSync, readdirSync } from 'node:fs';
import { HtmlValidate } from 'html-validate';
import { expect, it } from 'vitest';
import { watchFaults } from './browser.ts';
import { crawl } from './crawl.ts';
import { builtShop } from './server.ts';
import { browser, server } from './visit.ts';

it('answers every link that a visitor can follow from home', async () => {
  const { faults, pages } = await crawl(server.origin);
  expect(faults).toEqual([]);
  expect(pages.size).toBeGreaterThan(1);
});

it("leaves the owner's preview out", () => {
  expect(existsSync(`${builtShop}/preview`)).toBe(false);
});

it('answers 404 with the page for what is not there', async () => {
  const response = await fetch(`${server.origin}/no/such/page/`);
  expect(response.status).toBe(404);
  expect(response.headers.get('content-type')).toContain('text/html');
  expect(await response.text()).toContain('<h1');
});

it('opens home without an error, a refusal by the security policy or a request to another site', async () => {
  const page = await browser.newPage();
  const faults = watchFaults(page, server.origin);
  await page.goto(`${server.origin}/`, { waitUntil: 'networkidle' });
  expect(faults).toEqual([]);
  await page.close();
});

it('folds parts of a frame away on a telephone, and opens each when its box is ticked', async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 800 } });
  await page.goto(`${server.origin}/frames/ruff/`);
  const parts = page.locator('section:has(> .fold)');
  expect(await parts.count()).toBeGreaterThan(3);
  for (const part of await parts.all()) {
    const last = part.locator('> :last-child');
    expect(await last.isVisible()).toBe(false);
    await part.locator('> .fold > input').check();
    expect(await last.isVisible()).toBe(true);
  }
  await page.close();
});

it('builds valid HTML on every page', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:recommended'],
    // Both ways of writing a void element are HTML; components rendered on the server write the other one.
    // A phone number breaks where its reader's line ends; hyphens that look alike are for typesetters.
    rules: { 'void-style': 'off', 'tel-non-breaking': 'off' },
  });
  const files = readdirSync(builtShop, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  const faults: string[] = [];
  for (const file of files) {
    const report = await validator.validateFile(`${builtShop}/${file}`);
    for (const { messages } of report.results) {
      for (const { line, column, ruleId, message } of messages) {
        faults.push(`dist/${file}:${line}:${column} ${ruleId}: ${message}`);
      }
    }
  }
  expect(faults).toEqual([]);
});
