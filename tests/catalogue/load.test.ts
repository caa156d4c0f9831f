import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { printFaults } from '../../src/catalogue/printFaults.ts';
import { shopFolder } from './faultyShop.ts';

const demo = fileURLToPath(new URL('../../content', import.meta.url));

let root: string;
let content: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'shop-'));
  content = join(root, 'content');
  cpSync(shopFolder, content, { recursive: true });
});

afterEach(() => rmSync(root, { recursive: true, force: true }));

function codes(): string[] {
  const reading = loadCatalogue(content);
  return reading.ok ? [] : reading.faults.map(({ file, code }) => `${file} ${code}`);
}

describe('a content folder', () => {
  it('of the demonstration shop has no fault', () => {
    const reading = loadCatalogue(demo);
    expect(reading.ok ? '' : printFaults(reading.faults)).toBe('');
  });

  it('is read with what programs leave behind in it', () => {
    for (const name of ['.DS_Store', 'frames/Thumbs.db', 'frames/.dunlin.md.swp', 'frames/dunlin.md~']) {
      writeFileSync(join(content, name), '\0');
    }
    expect(codes()).toEqual([]);
  });

  it('that is not there is said to be missing', () => {
    content = join(root, 'shop');
    expect(codes()).toEqual(['shop unreadable']);
  });

  it('that is a file is refused', () => {
    content = join(root, 'shop');
    writeFileSync(content, 'name: x');
    expect(codes()).toEqual(['shop unreadable']);
  });

  it('that is empty lacks what a shop must have', () => {
    content = join(root, 'empty');
    mkdirSync(content);
    expect(codes()).toEqual([
      'empty/frames missing-file',
      'empty/lenses/designs missing-file',
      'empty/lenses/materials missing-file',
      'empty/shop.yaml missing-file',
    ]);
  });

  it('with a folder named like a file, and with folders in folders, names the files that nothing reads', () => {
    mkdirSync(join(content, 'frames/knot.md/deeper'), { recursive: true });
    writeFileSync(join(content, 'frames/knot.md/deeper/x.md'), 'x');
    expect(codes()).toEqual(['content/frames/knot.md/deeper/x.md unknown-file']);
  });

  it('with a file of many megabytes refuses it without reading it whole', () => {
    writeFileSync(join(content, 'frames/knot.md'), Buffer.alloc(50_000_000, 0x20));
    expect(codes()).toEqual(['content/frames/knot.md too-large']);
  });

  it.skipIf(process.platform === 'win32')('with a link that leads nowhere, or in a circle, names it', () => {
    symlinkSync('nowhere.md', join(content, 'frames/knot.md'));
    expect(codes()).toContain('content/frames/knot.md unreadable');
    rmSync(join(content, 'frames/knot.md'));
    symlinkSync('..', join(content, 'frames/round'));
    expect(codes().every((code) => code.endsWith('unknown-file'))).toBe(true);
  });
});
