import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeAll } from '../../src/commands/writeAll.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'write-'));
  writeFileSync(join(folder, 'a.md'), 'old');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const here = () =>
  Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]));

describe('files that are written together', () => {
  it('are all there', () => {
    chmodSync(join(folder, 'a.md'), 0o644);
    writeAll([
      { path: join(folder, 'a.md'), text: 'new', fresh: false },
      { path: join(folder, 'b.md'), text: 'b', fresh: true },
    ]);
    expect(here()).toEqual({ 'a.md': 'new', 'b.md': 'b' });
  });

  it('are none of them there when one of them was there already', () => {
    const write = () =>
      writeAll([
        { path: join(folder, 'b.md'), text: 'b', fresh: true },
        { path: join(folder, 'a.md'), text: 'new', fresh: true },
      ]);
    expect(write).toThrow('a.md is there already.');
    expect(here()).toEqual({ 'a.md': 'old' });
  });

  it('are as they were when one of them cannot be moved into its place', () => {
    mkdirSync(join(folder, 'c.md', 'inside'), { recursive: true });
    const write = () =>
      writeAll([
        { path: join(folder, 'a.md'), text: 'new', fresh: false },
        { path: join(folder, 'b.md'), text: 'b', fresh: true },
        { path: join(folder, 'c.md'), text: 'c', fresh: false },
      ]);
    expect(write).toThrow();
    rmSync(join(folder, 'c.md'), { recursive: true });
    expect(here()).toEqual({ 'a.md': 'old' });
  });
});
