import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { withoutPublicKey, withPublicKey } from '../../src/commands/editPublicKeys.ts';

const ONE = 'age1one';
const TWO = 'age1two';

/** The lists that owners write, with the keys that each holds. */
const SHOPS: readonly (readonly [string, readonly string[], string])[] = [
  ['no terms of ordering', [], 'name: Quay # the best\ntagline:   Frames\n'],
  ['no line end at its end', [], 'name: Quay'],
  ['terms without keys', [], 'order:\n    # how files come\n    delivery: [save]\nname: Quay\n'],
  ['an empty list', [], 'order:\n  publicKeys: [] # none yet\n  delivery: [save]\n'],
  ['nothing after the colon', [], 'order:\n  publicKeys: # none yet\n  delivery: [save]\n'],
  ['one key in brackets', [ONE], 'order:\n  publicKeys: [ age1one ] # since May\nname: Quay\n'],
  ['two keys in brackets', [ONE, 'age1mid'], 'order: \n  publicKeys: [age1one, age1mid]\n'],
  [
    'keys line by line',
    [ONE, 'age1mid'],
    'order:\n  publicKeys:\n  - age1one # stick\n  # and\n  - "age1mid"\n\n# end\nname: Quay\n',
  ],
  ['line ends of another system', [ONE], 'order:\r\n  publicKeys:\r\n    - age1one\r\nname: Quay\r\n'],
  ['a key at the very end', [ONE], 'order:\n  publicKeys:\n    - age1one'],
];

describe('a public key', () => {
  it.each(SHOPS)('is added to a shop with %s, and all else stays letter for letter', (_, keys, source) => {
    const text = withPublicKey(source, TWO);
    if (text === null) throw new Error('not added');
    expect(parse(text)).toEqual({
      ...parse(source),
      order: { ...parse(source).order, publicKeys: [...keys, TWO] },
    });
    // What was there is still there, in its order: the new letters stand between.
    const [kept] = Array.from(text).reduce<[string]>(
      ([rest], letter) => [rest.startsWith(letter) ? rest.slice(1) : rest],
      [source],
    );
    expect(kept).toBe('');
  });

  it.each(SHOPS)('is taken out again as it was put in: %s', (_, keys, source) => {
    const added = withPublicKey(source, TWO) ?? '';
    const text = withoutPublicKey(added, TWO);
    expect(parse(text ?? '').order.publicKeys ?? []).toEqual(keys);
    if (keys.length > 0 && source.endsWith('\n')) expect(text).toBe(source);
  });

  it('is taken from any place of the list', () => {
    const flow = 'order: \n  publicKeys: [age1one, age1mid, age1two]\n';
    const block = 'order:\n  publicKeys:\n    - age1one # a\n    - age1mid # b\n    - age1two # c\n';
    expect(withoutPublicKey(flow, ONE)).toBe('order: \n  publicKeys: [age1mid, age1two]\n');
    expect(withoutPublicKey(flow, TWO)).toBe('order: \n  publicKeys: [age1one, age1mid]\n');
    expect(withoutPublicKey(block, 'age1mid')).toBe(
      'order:\n  publicKeys:\n    - age1one # a\n    - age1two # c\n',
    );
    expect(withoutPublicKey(block, 'age1none')).toBeNull();
  });

  it.each([
    ['a file in braces', '{ name: Quay }'],
    ['terms in braces', 'order: { delivery: [save] }\n'],
    ['YAML that is none', 'order: [\n'],
    ['keys that stand for others', 'keys: &k [age1one]\norder:\n  publicKeys: *k\n'],
  ])('is not forced into %s', (_, source) => {
    expect(withPublicKey(source, TWO)).toBeNull();
  });
});
