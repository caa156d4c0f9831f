import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { seal, unseal } from '../../src/order/seal.ts';

let folder: string;
let shop: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bevelbook-keys-'));
  shop = join(folder, 'content');
  cpSync('tests/fixtures/faulty/shop', shop, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function keys(...args: string[]) {
  const run = spawnSync(process.execPath, ['src/commands/keys.ts', '--shop', shop, ...args], {
    encoding: 'utf8',
  });
  return { status: run.status, out: run.stdout, error: run.stderr };
}

function publicKeys(): readonly string[] {
  const reading = loadCatalogue(shop);
  return reading.ok ? reading.catalogue.shop.order.publicKeys : ['the shop has faults'];
}

const shopText = () => readFileSync(join(shop, 'shop.yaml'), 'utf8');

describe('npm run keys', () => {
  it('puts the public half into the shop and prints the private half, which opens what is sealed to it', async () => {
    const before = shopText();
    const { status, out } = keys();
    expect(status).toBe(0);
    const [identity = ''] = /AGE-SECRET-KEY-1\w{58}/.exec(out) ?? [];
    expect(out.split(identity)).toHaveLength(2);
    const [recipient = ''] = publicKeys();
    expect(out).toContain(recipient);
    expect(shopText().startsWith(before)).toBe(true);
    expect(shopText()).not.toContain('SECRET');
    const bytes = new TextEncoder().encode('order');
    expect(await unseal(await seal(bytes, publicKeys()), [identity])).toEqual(bytes);
  });

  it('does not put a key over one that is there', () => {
    keys();
    const before = shopText();
    const { status, out, error } = keys();
    expect([status, out]).toEqual([1, '']);
    expect(error).toContain('has a key already, and nothing was changed');
    expect(error).toContain('npm run keys -- --rotate');
    expect(shopText()).toBe(before);
  });

  it('rotates: the old key stays beside the new one until it is retired', () => {
    keys();
    const [old = ''] = publicKeys();
    expect(keys('--rotate').status).toBe(0);
    expect(publicKeys()).toHaveLength(2);
    expect(publicKeys()[0]).toBe(old);
    const { status, out } = keys('--retire', old);
    expect(status).toBe(0);
    expect(out).toContain('Keep its private half as long as you keep orders that were sealed before');
    expect(publicKeys()).toHaveLength(1);
    expect(publicKeys()).not.toContain(old);
  });

  it('retires neither the only key nor one that is not there', () => {
    keys();
    const [only = ''] = publicKeys();
    expect(keys('--retire', only).error).toContain('This is the only key');
    expect(keys('--retire', 'age1nobody').error).toContain(`It has:\n  ${only}`);
    expect(publicKeys()).toEqual([only]);
  });

  it('saves the private half to a new file of the owner alone, and prints it nowhere', () => {
    const file = join(folder, 'key.txt');
    const { status, out } = keys('--save', file);
    expect(status).toBe(0);
    expect(out).not.toMatch(/AGE-SECRET-KEY-1\w/);
    expect(readFileSync(file, 'utf8')).toMatch(/^# .*\nAGE-SECRET-KEY-1\w{58}\n$/);
    if (process.platform !== 'win32') expect(statSync(file).mode & 0o777).toBe(0o600);
  });

  it('writes over no file and not into the project, and then changes no shop', () => {
    const file = join(folder, 'key.txt');
    writeFileSync(file, 'mine');
    const before = shopText();
    expect(keys('--save', file).error).toContain('Nothing was changed. Name a new file.');
    expect(keys('--save', 'key.txt').error).toContain("lies in the project's folder");
    expect(existsSync('key.txt')).toBe(false);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect(shopText()).toBe(before);
  });

  it('changes nothing in a shop with faults, or when it is asked otherwise', () => {
    expect(keys('--all').error).toContain('npm run keys -- --rotate');
    expect(keys('--retire', 'age1', '--rotate').error).toContain('--retire stands alone');
    writeFileSync(join(shop, 'shop.yaml'), 'name: [');
    const { status, error } = keys();
    expect(status).toBe(1);
    expect(error).toContain('shop.yaml:1');
    expect(shopText()).toBe('name: [');
  });
});
