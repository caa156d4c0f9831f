import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { armour, isSealed, makeKeys, seal, unseal } from '../../src/order/seal.ts';

const folder = mkdtempSync(join(tmpdir(), 'bevelbook-seal-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const [mine, other] = await Promise.all([makeKeys(), makeKeys()]);
const bytes = new TextEncoder().encode('Ünïcode and 1,000 lines\n'.repeat(4000));

/** The `age` program of the system; where it is not installed, there is nothing to compare with. */
const program = process.env['AGE'] ?? 'age';
const hasProgram = spawnSync(program, ['--version']).status === 0;

describe('a sealed file', () => {
  it('opens with each key that it was sealed to, and with no other', async () => {
    const sealed = await seal(bytes, [mine.recipient, other.recipient]);
    expect(isSealed(sealed)).toBe(true);
    expect(await unseal(sealed, [mine.identity])).toEqual(bytes);
    expect(await unseal(sealed, [other.identity])).toEqual(bytes);
    const onlyMine = await seal(bytes, [mine.recipient]);
    expect(await unseal(onlyMine, [other.identity])).toBe('wrong-key');
    expect(await unseal(onlyMine, [other.identity, mine.identity])).toEqual(bytes);
    expect(await unseal(onlyMine, [])).toBe('no-key');
  });

  it('opens as letters too', async () => {
    const letters = await armour(await seal(bytes, [mine.recipient]));
    expect(new TextDecoder().decode(letters)).toMatch(/^-----BEGIN AGE ENCRYPTED FILE-----\n/);
    expect(isSealed(letters)).toBe(true);
    expect(await unseal(letters, [mine.identity])).toEqual(bytes);
  });

  it('holds nothing of what it was made from', async () => {
    expect(Buffer.from(await seal(bytes, [mine.recipient])).includes('1,000 lines')).toBe(false);
  });

  it('with any bit of it changed, or any length cut off, does not open', async () => {
    const sealed = await seal(new TextEncoder().encode('a short order'), [mine.recipient]);
    await fc.assert(
      fc.asyncProperty(fc.nat(sealed.length - 1), fc.nat(7), async (at, bit) => {
        const changed = sealed.map((byte, index) => (index === at ? byte ^ (1 << bit) : byte));
        expect(await unseal(changed, [mine.identity])).toBeTypeOf('string');
        expect(await unseal(sealed.subarray(0, at), [mine.identity])).toBeTypeOf('string');
      }),
    );
  });

  it('with a header of a hundred thousand recipients is refused unread', async () => {
    const stanza = `-> X25519 ${'A'.repeat(43)}\n${'A'.repeat(43)}\n`;
    const made = new TextEncoder().encode(
      `age-encryption.org/v1\n${stanza.repeat(100_000)}--- ${'A'.repeat(43)}\n`,
    );
    expect(await unseal(made, [mine.identity])).toBe('tampered');
  });

  it('needs a recipient, and one that is one', async () => {
    await expect(seal(bytes, [])).rejects.toThrow(RangeError);
    await expect(seal(bytes, ['age1nonsense'])).rejects.toThrow();
  });

  it.runIf(hasProgram)('opens with the age program, and opens what that program sealed', async () => {
    const key = join(folder, 'key.txt');
    const file = join(folder, 'order.age');
    writeFileSync(key, `# a key file of the age format\n${mine.identity}\n`);
    writeFileSync(file, await seal(bytes, [other.recipient, mine.recipient]));
    expect(new Uint8Array(spawnSync(program, ['-d', '-i', key, file]).stdout)).toEqual(bytes);
    for (const form of [[], ['-a']]) {
      const made = spawnSync(program, [...form, '-r', mine.recipient], { input: bytes }).stdout;
      expect(isSealed(made)).toBe(true);
      expect(await unseal(new Uint8Array(made), [mine.identity])).toEqual(bytes);
    }
    expect(readFileSync(file).length).toBeGreaterThan(bytes.length);
  });
});
