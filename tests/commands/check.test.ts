import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

function check(...folders: string[]) {
  const run = spawnSync(process.execPath, ['src/commands/check.ts', ...folders], {
    cwd: root,
    encoding: 'utf8',
  });
  return { status: run.status, out: run.stdout, error: run.stderr };
}

describe('npm run check', () => {
  it('counts what a faultless shop holds', () => {
    const { status, out, error } = check('content');
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/: \d+ frames in \d+ sizes, 7 designs, 6 materials, .*\. No faults\.\n$/);
  });

  it('says which sentences a shop lacks', () => {
    const { status, error } = check('tests/fixtures/faulty/shop');
    expect(status).toBe(1);
    expect(error).toMatch(
      /words\/en\/price\.yaml:1:1 [^\n]*\n\s+expected: price\.frame: a sentence with none but \{model\}/,
    );
  });

  it('prints every fault and ends with status 1', () => {
    const { status, out, error } = check('tests/fixtures/faulty/shop/lenses');
    expect(status).toBe(1);
    expect(out).toBe('');
    expect(error).toContain(
      'tests/fixtures/faulty/shop/lenses/shop.yaml:1:1 a file is missing [missing-file]',
    );
    expect(error).toContain('[unknown-file]');
  });

  it('names the folder that is not there', () => {
    expect(check('nowhere').error).toContain('nowhere:1:1 this file cannot be read [unreadable]');
  });

  it('takes the folder as the other commands do', () => {
    expect(check('--shop', 'nowhere').error).toBe(check('nowhere').error);
  });

  it('says how it is used when it is asked otherwise', () => {
    for (const wrong of [['--all'], ['a', 'b'], ['--shop', 'a', 'b'], ['--shop']]) {
      const { status, error } = check(...wrong);
      expect(status).toBe(1);
      expect(error).toContain('Usage: npm run check -- --shop FOLDER');
      expect(error).not.toContain('    at ');
      expect(error).not.toContain('positional');
    }
  });
});
