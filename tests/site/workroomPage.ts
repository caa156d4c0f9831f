/** The workroom's page in a browser, and order files to open there. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { toMinusCylinder, toPlusCylinder } from '../../src/optics/prescription.ts';
import { resolvePrism } from '../../src/optics/prismBase.ts';
import { orderBytes } from '../../src/order/makeOrder.ts';
import { orderNumber } from '../../src/order/number.ts';
import type { Order } from '../../src/order/order.ts';
import { seal } from '../../src/order/seal.ts';
import { shopVersion } from '../../src/order/shopVersion.ts';
import type { JudgedPair } from '../../src/quote/judgePair.ts';
import { perfectPair } from '../../src/workroom/inspection/perfect.ts';
import { orderOf, shop } from '../order/orders.ts';
import { judgedOf, PAIRS, type PairName } from '../workroom/jobs.ts';
import { watchFaults } from './browser.ts';

const version = await shopVersion(shop);
export const numberOf = (seed: number): string => orderNumber(new Uint8Array(16).fill(seed));

export interface SentFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** An honest order of named pairs. */
export function orderFor(names: readonly PairName[], seed: number): Order {
  const pairs = names.map((name) => PAIRS[name]);
  const request = { date: '2026-11-25', destination: 'US-ME', pairs };
  return orderOf(request, { number: numberOf(seed), shopVersion: version });
}

/** Bytes as a file to pick. */
export const fileOf = (name: string, bytes: Uint8Array | string): SentFile => ({
  name,
  mimeType: 'application/octet-stream',
  buffer: Buffer.from(bytes),
});

/** The sealed file of an order. */
export const sealedFile = async (name: string, order: Order, recipient: string): Promise<SentFile> =>
  fileOf(name, await seal(orderBytes(order), [recipient]));

/** A workroom's page, with what goes wrong on it and what it asks the network for from now on. */
export async function openWorkroom(browser: Browser, origin: string, options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const faults = watchFaults(page, origin);
  await page.goto(`${origin}/workroom/`);
  await page.getByRole('heading', { name: 'Order files' }).waitFor();
  await page.getByText('This page also works without a network').waitFor();
  const asked: string[] = [];
  page.on('request', (request) => {
    // A paper in its frame has no address of its own.
    if (!/^(?:about|blob|data):/.test(request.url())) asked.push(request.url());
  });
  return {
    ...{ context, page, faults, asked },
    pick: (files: readonly SentFile[] | string) =>
      page.getByLabel('Choose files').setInputFiles(typeof files === 'string' ? files : [...files]),
    async giveKey(identity: string) {
      await page.getByLabel('Private key of the workshop').fill(identity);
      await page.getByRole('button', { name: 'Use this key' }).click();
    },
    summary: (text: string) => page.locator('.wr-report', { hasText: text }).waitFor(),
    choose: (number: string) => page.locator('button.wr-job', { hasText: number }).click(),
  };
}

/** What is typed for a pair that is exactly as ordered, its cylinders in plus form where asked. */
export function asOrdered(name: PairName, plus = false): Readonly<Record<string, string>> {
  const judged: JudgedPair = judgedOf(PAIRS[name]);
  const perfect = perfectPair(judged);
  if (perfect === null) throw new Error(`No lens of ${name} can be computed.`);
  const typed: Record<string, string> = {};
  for (const eye of ['right', 'left'] as const) {
    const lens = perfect[eye];
    const put = (field: string, value: number | undefined) => {
      if (value !== undefined) typed[`${eye}-${field}`] = String(Number(value.toFixed(3)));
    };
    const power = plus ? toPlusCylinder(lens.power) : toMinusCylinder(lens.power);
    put('sphere', power.sphereD);
    put('cylinder', power.cylinderD);
    put('axis', power.cylinderD === 0 ? undefined : power.axisDeg);
    put('add', lens.addD);
    const { horizontal, vertical } = resolvePrism(eye, lens.prism ?? { x: 0, y: 0 });
    put('across', horizontal.amount);
    put('upright', vertical.amount);
    typed[`${eye}-acrossBase`] = horizontal.base;
    typed[`${eye}-uprightBase`] = vertical.base;
    put('pd', lens.pdMm);
    put('height', lens.heightMm);
    put('segment', lens.segmentHeightMm);
    put('tilt', lens.segmentTiltDeg);
    put('thickness', lens.centreThicknessMm);
    put('curve', lens.baseCurveReadingD);
    put('warpage', lens.warpageD);
    put('polarising', lens.polarisingAxisDeg);
  }
  if (perfect.segmentSeparationMm !== undefined) typed['separation'] = String(perfect.segmentSeparationMm);
  return typed;
}

/** Types a pair's measurements at once and ticks its alignment. */
export async function inspect(page: Page, typed: Readonly<Record<string, string>>): Promise<void> {
  await page.locator('#wr-0-by').waitFor();
  await page.evaluate(
    (entries) => {
      const write = (element: Element | null, value: string) => {
        const field = element as HTMLInputElement | HTMLSelectElement;
        field.value = value;
        field.dispatchEvent(new Event('input', { bubbles: true }));
      };
      for (const [field, text] of entries) write(document.querySelector(`#wr-0-${field}`), text);
      for (const box of document.querySelectorAll<HTMLInputElement>('.wr-aligned input')) box.click();
    },
    Object.entries({ ...typed, by: 'M. Tern' }),
  );
}
