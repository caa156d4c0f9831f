/** A small faultless shop (tests/fixtures/faulty/shop), and ways to spoil one file of it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { printFaults } from '../../src/catalogue/printFaults.ts';
import { readCatalogue } from '../../src/catalogue/readCatalogue.ts';
import type { SourceFile } from '../../src/catalogue/reading/sourceText.ts';

/** The shop's folder on the disk. */
export const shopFolder = fileURLToPath(new URL('../fixtures/faulty/shop', import.meta.url));

const encoder = new TextEncoder();

/** A file below `content/`. */
export function file(path: string, content: string | Uint8Array): SourceFile {
  return { path: `content/${path}`, bytes: typeof content === 'string' ? encoder.encode(content) : content };
}

/** The files of the faultless shop. */
export function goodShop(): SourceFile[] {
  return readdirSync(shopFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      // A checkout with other line ends is still the same shop.
      const text = readFileSync(path, 'utf8').replaceAll('\r\n', '\n');
      return file(path.slice(shopFolder.length + 1).replaceAll('\\', '/'), text);
    });
}

/** The text of a file of the faultless shop. */
export function textOf(path: string): string {
  const found = goodShop().find((one) => one.path === `content/${path}`);
  if (found === undefined) throw new Error(`The shop has no ${path}.`);
  return new TextDecoder().decode(found.bytes);
}

/** The faultless shop with `files` put in, or over those of the same name. */
export function shopWith(...files: SourceFile[]): SourceFile[] {
  const names = new Set(files.map(({ path }) => path));
  return [...goodShop().filter(({ path }) => !names.has(path)), ...files];
}

/** The faultless shop without a file. */
export function shopWithout(path: string): SourceFile[] {
  return goodShop().filter((one) => one.path !== `content/${path}`);
}

/** The faultless shop with one passage of a file replaced. */
export function shopEdited(path: string, passage: string, by: string): SourceFile[] {
  const text = textOf(path);
  if (!text.includes(passage)) throw new Error(`${path} has no passage ${passage}`);
  return shopWith(
    file(
      path,
      text.replace(passage, () => by),
    ),
  );
}

/** What `npm run check` prints of these files; `no fault` where there is none. */
export function printed(files: readonly SourceFile[]): string {
  const reading = readCatalogue(files);
  return reading.ok ? 'no fault' : `\n${printFaults(reading.faults)}\n`;
}

/** What is printed after one edit. */
export function printedAfter(path: string, passage: string, by: string): string {
  return printed(shopEdited(path, passage, by));
}
