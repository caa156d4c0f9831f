import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { withItem, withText } from '../../src/commands/editFields.ts';

const FRAME = `---
# The frame of the week.
model: Dunlin   # a wader
price:   "119.00"   # since May
inTheBox: [Case, Cloth]
colourways:
  - code: mudflat
    name: Mudflat   # brown
    front: { colour: "#8a7a66" }
  - { code: night, name: Night, front: '#25324a' }

sizes: []   # soon
---

price: "1.00" stands in the story too.
`;

const fieldsOf = (source: string) => parse(source.split(/^---[ \t]*\r?$/m)[1] ?? '');
const without = (text: string, ...parts: string[]) =>
  parts.reduce((rest, part) => rest.replace(part, ''), text);

describe('a text in a file', () => {
  it('is exchanged, and nothing around it', () => {
    const text = withText(FRAME, ['price'], '125.00');
    expect(text).toBe(FRAME.replace('"119.00"', '"125.00"'));
  });

  it('keeps the quotes that it had', () => {
    expect(withText(FRAME, ['colourways', 1, 'front'], '#000000')).toBe(FRAME.replace('#25324a', '#000000'));
  });

  it.each([
    ['no such field', ['cost']],
    ['a list', ['colourways']],
    ['a field of the story', ['price', 0]],
  ])('is refused for %s', (_, path) => expect(withText(FRAME, path, '1.00')).toBeNull());

  it('is refused where a quote or a line end would break the file', () => {
    for (const text of ['a"b', 'a\nb', "a'b"]) expect(withText(FRAME, ['price'], text)).toBeNull();
  });

  it('is refused where an alias would change with it', () => {
    const shared = 'a: &price "1.00"\nb: *price\n';
    expect(withText(shared, ['a'], '2.00')).toBeNull();
    expect(withText(shared, ['b'], '2.00')).toBeNull();
  });

  it.each([
    ['CRLF', FRAME.replaceAll('\n', '\r\n')],
    ['a byte-order mark', `\uFEFF${FRAME}`],
  ])('is exchanged in a file with %s', (_, source) => {
    expect(withText(source, ['price'], '1.50')).toBe(source.replace('119.00', '1.50'));
  });

  it('is exchanged in a file of YAML alone', () => {
    expect(withText('rates:\n  - amount: "6.50"\n', ['rates', 0, 'amount'], '7.00')).toBe(
      'rates:\n  - amount: "7.00"\n',
    );
  });
});

describe('an item', () => {
  const item = 'code: kelp\nname: Kelp\nfront: "#445544"\n';

  it('comes last in a list of lines, indented as the others', () => {
    const text = withItem(FRAME, ['colourways'], item) ?? '';
    expect(without(text, '  - code: kelp\n    name: Kelp\n    front: "#445544"\n')).toBe(FRAME);
    expect(fieldsOf(text).colourways.at(-1)).toEqual({ code: 'kelp', name: 'Kelp', front: '#445544' });
  });

  it('comes last in a list in one line, empty or not', () => {
    expect(withItem(FRAME, ['inTheBox'], 'Spare pads')).toBe(FRAME.replace('Cloth]', 'Cloth, Spare pads]'));
    expect(withItem(FRAME, ['sizes'], 'id: 51-19\na: 51\n')).toBe(
      FRAME.replace('[]', '[{ id: 51-19, a: 51 }]'),
    );
  });

  it('is refused where there is no list', () => {
    expect(withItem(FRAME, ['model'], item)).toBeNull();
    expect(withItem('no front matter: [', ['a'], item)).toBeNull();
  });

  it('law: the rest of the file stays byte for byte, whatever remarks and line ends it has', () => {
    const eol = fc.constantFrom('\n', '\r\n');
    const remark = fc.constantFrom('', ' # remark', '   ');
    const gap = fc.constantFrom('', '\n', '\n# between\n');
    const indent = fc.constantFrom('', '  ', '    ');
    fc.assert(
      fc.property(eol, remark, gap, indent, fc.boolean(), (end, note, between, indented, last) => {
        const list = `list:\n${indented}- code: a${note}\n${indented}  name: A${note}\n${between}${indented}- code: b${note}\n`;
        const source = `---\n${list}${last ? '' : `other: 1${note}\n`}---\nbody\n`.replaceAll('\n', end);
        const text = withItem(source, ['list'], 'code: c\n');
        expect(text?.replace(`${indented}- code: c${end}`, '')).toBe(source);
        expect(fieldsOf(text ?? '').list.map(({ code }: { code: string }) => code)).toEqual(['a', 'b', 'c']);
      }),
    );
  });
});
