import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const copy = join(mkdtempSync(join(tmpdir(), 'schemas-')), 'content');
cpSync(join(root, 'content'), copy, { recursive: true });
// What another language still lacks is told elsewhere.
const shopFile = join(copy, 'shop.yaml');
writeFileSync(shopFile, readFileSync(shopFile, 'utf8').replace(/^otherLanguages:.*\n/m, ''));
rmSync(join(copy, 'translations'), { recursive: true, force: true });
afterAll(() => rmSync(join(copy, '..'), { recursive: true, force: true }));

function run(command: string, ...words: string[]) {
  const done = spawnSync(process.execPath, [`src/commands/${command}.ts`, ...words], {
    cwd: root,
    encoding: 'utf8',
  });
  return { status: done.status, out: done.stdout, error: done.stderr };
}

const textsOf = (folder: string) =>
  readdirSync(join(folder, '.schemas'))
    .sort()
    .map((name) => [name, readFileSync(join(folder, '.schemas', name), 'utf8').replaceAll('\r\n', '\n')]);

describe('npm run schemas', () => {
  it('writes what the demonstration shop holds already', () => {
    rmSync(join(copy, '.schemas'), { recursive: true });
    expect(run('schemas', copy).status).toBe(0);
    expect(textsOf(copy)).toEqual(textsOf(join(root, 'content')));
    expect(run('check', copy).out).toMatch(/No faults\.\n$/);
  });

  it('puts the line at the head of files that have none, and touches nothing else', () => {
    const files = ['frames/dunlin.md', 'words/en/page.yaml', 'shop.yaml'].map((path) => join(copy, path));
    const before = files.map((path) => readFileSync(path, 'utf8'));
    for (const path of files)
      writeFileSync(path, readFileSync(path, 'utf8').replace(/# yaml-language-server.*\n/, ''));
    expect(run('schemas', copy).out).toContain('dunlin.md has that line now.');
    expect(files.map((path) => readFileSync(path, 'utf8'))).toEqual(before);
  });

  it('follows the currency, and npm run check says when it lags behind', () => {
    const shop = join(copy, 'shop.yaml');
    writeFileSync(shop, readFileSync(shop, 'utf8').replace('currency: USD', 'currency: CAD'));
    expect(run('check', copy)).toMatchObject({ status: 0, out: expect.stringContaining('npm run schemas') });
    expect(run('schemas', copy).status).toBe(0);
    expect(textsOf(copy).join()).toContain('a price in CAD');
    expect(run('check', copy).out).not.toContain('npm run schemas');
  });

  it('writes nothing for a shop with faults, and says how it is used', () => {
    expect(run('schemas', join(copy, 'frames'))).toMatchObject({ status: 1, out: '' });
    for (const wrong of [['--all'], ['a', 'b']])
      expect(run('schemas', ...wrong).error).toContain('Usage: npm run schemas -- FOLDER');
  });
});
