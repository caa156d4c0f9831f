/** From the shop's page to printed papers, in two tabs and through one sealed file: four kinds of pairs in one order. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { makeKeys } from '../../src/order/seal.ts';
import type { PairRequest } from '../../src/quote/request.ts';
import { PAIRS } from '../workroom/jobs.ts';
import { fillInBuyer, openOrder } from './orderPage.ts';
import { browser, server } from './visit.ts';
import { openWorkroom } from './workroomPage.ts';

const KINDS = ['single', 'progressive', 'bifocal', 'sun'] as const;
const keys = await makeKeys();
const folder = mkdtempSync(join(tmpdir(), 'bevelbook-journey-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A power as it is written, with its sign. */
const signed = (power: number | null | undefined) =>
  typeof power === 'number' && power > 0 ? `+${power}` : power;

/** What a shopper types and chooses to ask for a pair. */
function entriesOf({ size, colourway, wearer, prescription, fit, lenses }: PairRequest) {
  const { design, material, tint, coating, use } = lenses;
  const entries: Record<string, string | number | null | undefined> = {
    ...{ size, colourway, wearer, use, design, material, coating, tint: tint ?? 'clear' },
    vertexTested: prescription?.vertexDistance,
    issued: prescription?.issued,
  };
  for (const eye of ['right', 'left'] as const) {
    const { sphere, cylinder, axis, add, prism, balance } = prescription?.[eye] ?? {};
    if (balance) entries[`${eye}.balance`] = 'yes';
    for (const [name, value] of Object.entries({ sphere, cylinder, add }))
      entries[`${eye}.${name}`] = signed(value);
    entries[`${eye}.axis`] = axis;
    for (const [at, { amount, base }] of (prism ?? []).entries()) {
      entries[`${eye}.prism${at + 1}.amount`] = amount;
      entries[`${eye}.prism${at + 1}.base`] = base;
    }
    for (const name of ['pd', 'nearPd', 'fittingHeight', 'segmentHeight'] as const) {
      const measured = fit?.[name];
      if (typeof measured === 'object') entries[`${name}.${eye}`] = measured[eye];
    }
  }
  const known = Object.entries(entries).filter(([, value]) => value !== undefined && value !== null);
  return Object.fromEntries(known.map(([name, value]) => [name, String(value)]));
}

it('carries four pairs from the shop to a page for each of their papers, with nothing changed on the way', async () => {
  const pairs = KINDS.map((kind) => ({
    frame: PAIRS[kind].frame as string,
    entries: entriesOf(PAIRS[kind]),
  }));
  const { page, faults } = await openOrder(browser, server.origin, pairs, {
    terms: { publicKeys: [keys.recipient] },
  });
  const each = async (label: string, act: (at: number) => Promise<void>) => {
    expect(await page.getByLabel(label).count()).toBe(KINDS.length);
    for (const at of KINDS.keys()) await act(at);
  };
  const field = (label: string, at: number) => page.getByLabel(label).nth(at);
  await each('Name of the person who will wear it', (at) =>
    field('Name of the person who will wear it', at).fill(`Ada Marsh ${at + 1}`),
  );
  await each('Who prescribed', (at) => field('Who prescribed', at).fill('Dr Wren'));
  await each('Who took the measurements', (at) =>
    field('Who took the measurements', at)
      .selectOption('optician')
      .then(() => undefined),
  );
  await fillInBuyer(page);
  const total = await page.locator('.or-form .ws-price tfoot td').textContent();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the file', exact: true }).click(),
  ]);
  const path = join(folder, file.suggestedFilename());
  await file.saveAs(path);
  expect(path).toMatch(/\.json\.age$/);
  expect(faults).toEqual([]);

  const room = await openWorkroom(browser, server.origin);
  await room.pick(path);
  await room.summary('waiting for a key: 1');
  await room.giveKey(keys.identity);
  await room.summary('Opened: 1,');
  await room.page.getByText('Every line is the same.').waitFor();
  for (const kind of KINDS)
    expect(await room.page.locator('body').textContent()).toContain(PAIRS[kind].size as string);
  await room.page.getByRole('button', { name: 'Show: Itemized receipt' }).click();
  await room.page
    .frameLocator('.wr-paper')
    .locator('.paper')
    .getByText(total ?? '')
    .first()
    .waitFor();
  await room.page.evaluate(() => {
    const real = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow');
    Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', {
      get() {
        const inside = real?.get?.call(this) as Window;
        inside.print = () => document.body.setAttribute('data-printed', '');
        return inside;
      },
    });
  });
  await room.page.getByRole('button', { name: 'Print all papers as one' }).click();
  await room.page.locator('body[data-printed]').waitFor({ state: 'attached' });
  const html = (await room.page.locator('.wr-printed').getAttribute('srcdoc')) ?? '';
  const paper = await room.context.newPage();
  await paper.setContent(html);
  const count = html.split('<article').length - 1;
  expect(count).toBe(4 + 5 * KINDS.length);
  const pdf = await paper.pdf({ format: 'A4' });
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(count);
  expect(room.asked).toEqual([]);
  expect(room.faults).toEqual([]);
  await page.context().close();
  await room.context.close();
});
