import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const shop = join(mkdtempSync(join(tmpdir(), 'new-')), 'content');
cpSync(join(root, 'content'), shop, { recursive: true });
afterAll(() => rmSync(join(shop, '..'), { recursive: true, force: true }));

function run(words: readonly string[], input = '') {
  const done = spawnSync(process.execPath, ['src/commands/new.ts', ...words], {
    cwd: root,
    input,
    encoding: 'utf8',
  });
  return { status: done.status, out: done.stdout, error: done.stderr };
}

describe('npm run new', () => {
  it('asks what is new, and then what that needs', () => {
    expect(run(['pge'])).toMatchObject({
      status: 1,
      error: expect.stringContaining('Did you mean page?'),
    });
    const { status: left, out: said, error } = run([], 'pge\npage\nOur tools\n');
    expect([left, said.match(/What is new/g)?.length]).toEqual([1, 2]);
    expect(error).toContain("npm run new -- page --title='Our tools' --shop=content");
    const { status, out } = run(['page', '--shop', shop], 'Our tools\n\nWhat we use\nfirst\n3\nPliers.\n');
    expect(status).toBe(0);
    expect(out).toContain('Expected a whole number from 1 to 100, found the text "first".');
    expect(existsSync(join(shop, 'pages/our-tools.md'))).toBe(true);
  });

  it('lists the kinds, and the flags of each with what may be written', () => {
    expect(run(['--help']).out).toContain('colourway    a colourway of a frame that is there');
    const { out } = run(['frame', '--help', '--shop', shop]);
    expect(out).toMatch(/--collection +Collection \(harbour, saltmarsh, breakwater, small or workshop\)/);
  });

  it('refuses a flag that there is not, and says where the flags are', () => {
    const { status, error } = run(['page', '--colour', 'red']);
    expect(status).toBe(1);
    expect(error).toContain('npm run new -- page --help');
  });
});
