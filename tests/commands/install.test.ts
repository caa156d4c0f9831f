import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const decider = fileURLToPath(new URL('../../src/commands/install.mjs', import.meta.url));
const here = { os: [process.platform], cpu: [process.arch] };
const elsewhere = { os: ['plan9'], cpu: [process.arch] };

const wanted = {
  '': { name: 'shop' },
  'node_modules/a': { version: '1.0.0', integrity: 'sha512-a' },
  'node_modules/node-here': {
    version: '22.0.0',
    integrity: 'sha512-h',
    optional: true,
    bin: { node: 'n' },
    ...here,
  },
  'node_modules/node-elsewhere': { version: '22.0.0', optional: true, bin: { node: 'n' }, ...elsewhere },
  'node_modules/b-elsewhere': { version: '2.0.0', optional: true, ...elsewhere },
};

let root: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'bevelbook-install-'));
  mkdirSync(join(root, 'src', 'commands'), { recursive: true });
  mkdirSync(join(root, 'node_modules'));
  copyFileSync(decider, join(root, 'src', 'commands', 'install.mjs'));
  writeFileSync(join(root, 'package-lock.json'), JSON.stringify({ packages: wanted }));
  // Stands in for npm: notes that it was called, and how, and ends as it is told to.
  writeFileSync(
    join(root, 'npm-cli.js'),
    "require('fs').writeFileSync('called', process.argv.slice(2).join(' ')); console.log('added'); process.exit(Number(process.env.ENDS ?? 0));",
  );
});

afterEach(() => rmSync(root, { recursive: true, force: true }));

function has(packages: Readonly<Record<string, unknown>>): void {
  writeFileSync(join(root, 'node_modules', '.package-lock.json'), JSON.stringify({ packages }));
}

function decide(ends = 0) {
  const env = { ...process.env, npm_execpath: join(root, 'npm-cli.js'), ENDS: String(ends) };
  const run = spawnSync(process.execPath, [join(root, 'src', 'commands', 'install.mjs')], {
    env,
    encoding: 'utf8',
  });
  return { ...run, installed: existsSync(join(root, 'called')) };
}

const { 'node_modules/a': a, 'node_modules/node-here': nodeHere } = wanted;

describe('the install decider', () => {
  it('does nothing, silently, where all that belongs on this machine is there', () => {
    has({ 'node_modules/a': a, 'node_modules/node-here': nodeHere });
    expect(decide()).toMatchObject({ status: 0, installed: false, stdout: '', stderr: '' });
  });

  it.each([
    ['a package is missing', { 'node_modules/node-here': nodeHere }],
    [
      'a package has another version',
      { 'node_modules/a': { ...a, version: '0.9.0' }, 'node_modules/node-here': nodeHere },
    ],
    [
      'a package has other content',
      { 'node_modules/a': { ...a, integrity: 'sha512-x' }, 'node_modules/node-here': nodeHere },
    ],
    [
      'a package is there that the lock no longer names',
      { ...wanted, 'node_modules/old': { version: '1.0.0' } },
    ],
    ['the Node of this machine is missing', { 'node_modules/a': a }],
  ])('installs when %s', (_case, packages) => {
    has(packages);
    expect(decide()).toMatchObject({ status: 0, installed: true });
  });

  it('installs when nothing is there yet, and leaves standard output to the command that follows', () => {
    expect(decide()).toMatchObject({ status: 0, installed: true, stdout: '' });
  });

  it('passes the status of a failed installation on and says what to look at', () => {
    const run = decide(7);
    expect(run.status).toBe(7);
    expect(run.stderr).toContain('Check the connection to the package registry');
  });

  it('says so when package-lock.json cannot be read', () => {
    writeFileSync(join(root, 'package-lock.json'), '<<<<<<< ours');
    expect(decide()).toMatchObject({ status: 1, installed: false });
  });
});
