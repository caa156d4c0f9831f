import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readYaml } from '../../../src/catalogue/reading/yamlValue.ts';
import { file, printed, printedAfter, shopWith, textOf } from '../faultyShop.ts';

describe('YAML that cannot be read', () => {
  it('names each tab that indents', () => {
    expect(
      printedAfter('frames/dunlin.md', '    a: 48\n    b: 42', '\ta: 48\n\tb: 42'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:20:1 a tab indents this line [yaml-tab]
        20 | →a: 48
           | ^
        expected: spaces at the beginning of a line
        found:    a tab
        to do:    Replace the tab with two spaces a level.

      content/frames/dunlin.md:21:1 a tab indents this line [yaml-tab]
        21 | →b: 42
           | ^
        expected: spaces at the beginning of a line
        found:    a tab
        to do:    Replace the tab with two spaces a level.

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a field that is given twice', () => {
    expect(printedAfter('frames/dunlin.md', 'massG: 22', 'massG: 22\nmodel: Knot')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:13:1 this field is given twice [duplicate-key]
        13 | model: Knot
           | ^^^^^
        expected: "model" once
        found:    "model" a second time
        to do:    Remove one of the two.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a bracket that is not closed', () => {
    expect(
      printedAfter('frames/dunlin.md', 'inTheBox: [Case, Cloth]', 'inTheBox: [Case, Cloth'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:15:1 this is not well-formed YAML [yaml-syntax]
        15 | colourways:
           | ^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a line with another indent, or a bracket that is still open above it
        to do:    Indent the fields of one group alike, by two spaces a level, and close every [ and {.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a colon inside a text', () => {
    expect(
      printedAfter('frames/dunlin.md', 'summary: A round', 'summary: New: a round'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:4:10 this is not well-formed YAML [yaml-syntax]
        4 | summary: New: a round acetate front.
          |          ^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a second colon or a deeper group in the same line
        to do:    If the colon belongs to the text, put the text in double quotes; else begin a new line.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a quote that is not closed', () => {
    expect(printedAfter('frames/dunlin.md', 'price: "149.00"', 'price: "149.00')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:5:15 this is not well-formed YAML [yaml-syntax]
        5 | price: "149.00
          |               ^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a quote, bracket, comma or colon is missing
        to do:    Close what was opened; write a colon and a space after the name of a field.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a text that begins with a reserved character', () => {
    expect(printedAfter('frames/dunlin.md', 'model: Dunlin', 'model: @Dunlin')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:2:8 this is not well-formed YAML [yaml-syntax]
        2 | model: @Dunlin
          |        ^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a text that begins with a reserved character
        to do:    Put the text in double quotes.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it.each([
    ['    b: 42', '   b: 42', 'a field that is indented less than the others of its list item'],
    ['  - { code: slate', ' - { code: slate', 'a "- " that is indented less than the items above it'],
  ])('names the indent of a list that lacks a space: %j', (line, short, found) => {
    const printed = printedAfter('frames/dunlin.md', line, short);
    expect(printed).toContain(found);
    expect(printed).toContain('Add the missing spaces');
  });

  it('names a field with another indent', () => {
    expect(printedAfter('frames/dunlin.md', 'massG: 22', '  massG: 22')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:11:14 this is not well-formed YAML [yaml-syntax]
        11 | frameCurveD: 4
           |              ^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a value here, and a field in the next line that is indented deeper
        to do:    Indent the next line like this one.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names an alias without an anchor', () => {
    expect(printedAfter('frames/dunlin.md', 'model: Dunlin', 'model: *bold')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:2:8 this alias cannot be followed [yaml-alias]
        2 | model: *bold
          |        ^^^^^
        expected: an anchor &bold further up in this file
        found:    *bold
        to do:    Write &bold before the value that is meant, or quote the text if it begins with a star.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a tag', () => {
    expect(printedAfter('frames/dunlin.md', 'model: Dunlin', 'model: !Dunlin x')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:2:16 a YAML tag stands here [yaml-tag]
        2 | model: !Dunlin x
          |                ^
        expected: a value without a tag
        found:    !Dunlin
        to do:    Remove the tag, or quote the text if it begins with an exclamation mark.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a directive, which would change what yes means', () => {
    expect(
      printed(shopWith(file('shop.yaml', `%YAML 1.1\n---\n${textOf('shop.yaml')}`))),
    ).toMatchInlineSnapshot(`
      "
      content/shop.yaml:1:1 a YAML directive stands here [yaml-directive]
        1 | %YAML 1.1
          | ^^^^^^^^^
        expected: fields without a YAML directive
        found:    %YAML 1.1
        to do:    Remove the line.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a second document', () => {
    expect(printed(shopWith(file('words/en/page.yaml', 'a: x\n---\nb: y\n')))).toMatchInlineSnapshot(`
      "
      content/words/en/page.yaml:2:1 this is not well-formed YAML [yaml-syntax]
        2 | ---
          | ^^^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a second YAML document
        to do:    Remove the line --- and what follows, or make another file of it.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a merge key as a field that is not known', () => {
    expect(
      printedAfter('frames/dunlin.md', '  - id: 48-20', '  - <<: { dbl: 20 }\n    id: 48-20'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:19:5 sizes.0.<<: this field is not known [unknown-key]
        19 |   - <<: { dbl: 20 }
           |     ^^
        expected: one of the fields id, a, b, dbl, ed, temple, bridge, outline, priceDifference
        found:    "<<"
        to do:    Remove it, or use one of the fields above.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('refuses aliases that grow a thousandfold', () => {
    const bomb = ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]'];
    for (let i = 1; i < 12; i += 1)
      bomb.push(
        `a${i}: &a${i} [${Array(10)
          .fill(`*a${i - 1}`)
          .join(', ')}]`,
      );
    expect(printed(shopWith(file('words/en/bomb.yaml', bomb.join('\n'))))).toMatchInlineSnapshot(`
      "
      content/words/en/bomb.yaml:1:16 this nests or repeats too much [yaml-too-much]
        1 | a0: &a0 [x, x, x, x, x, x, x, x, x, x]
          |                ^
        expected: at most 20000 values when aliases are followed
        found:    more
        to do:    Write the values out, without aliases that repeat each other.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('refuses a value that holds itself, and 100,000 brackets', () => {
    expect(readYaml('a: &a [*a]').faults.map(({ detail }) => detail.code)).toEqual(['yaml-too-much']);
    expect(readYaml('['.repeat(100_000)).faults.length).toBeGreaterThan(0);
    expect(readYaml('{a: '.repeat(5_000)).faults.length).toBeGreaterThan(0);
  });
});

describe('YAML', () => {
  it.each([
    ['yes and no are texts', 'a: [yes, no, on, off]', { a: ['yes', 'no', 'on', 'off'] }],
    ['a day is a text', 'a: 2026-11-01', { a: '2026-11-01' }],
    ['a time is a text', 'a: 12:30', { a: '12:30' }],
    ['an anchor stands for its value', 'a: &x { b: 1 }\nc: *x', { a: { b: 1 }, c: { b: 1 } }],
    ['a folded text is one line', 'a: >-\n  one\n  two', { a: 'one two' }],
    ['an umlaut stays', 'a: Größe 5 µm', { a: 'Größe 5 µm' }],
    ['a comment says nothing', '# a: 1\nb: 2 # two', { b: 2 }],
    ['the key null is a text', 'null: 3\ntrue: 4', { null: 3, true: 4 }],
    ['nothing is null', 'a:\nb: ~', { a: null, b: null }],
    ['a key __proto__ stays a key', '__proto__: { x: 1 }', JSON.parse('{"__proto__":{"x":1}}')],
  ])('is read by the rules of 1.2: %s', (_, text, value) => {
    const read = readYaml(text);
    expect(read.faults).toEqual([]);
    expect(read.value).toEqual(value);
  });

  it('law: plain values come back as the library itself reads them', () => {
    const values = fc
      .jsonValue({ maxDepth: 4 })
      .filter((value) => typeof value === 'object' && value !== null);
    fc.assert(
      fc.property(values, (value) => {
        const text = JSON.stringify(value);
        expect(readYaml(text).value).toEqual(parse(text));
      }),
    );
  });

  it('law: no text makes the reader throw, and each fault has its place in the text', () => {
    const pieces = fc.constantFrom(
      'a',
      ':',
      ' ',
      '\n',
      '-',
      '  ',
      '[',
      ']',
      '{',
      '}',
      '&a',
      '*a',
      '!t',
      '"',
      "'",
      '|',
      '>',
      '#',
      '?',
      '\t',
      '%',
      '@',
      ',',
      '0x1f',
      '~',
      '---',
    );
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(pieces).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        for (const { start, end } of readYaml(text).faults) {
          expect(start).toBeGreaterThanOrEqual(0);
          expect(start).toBeLessThanOrEqual(text.length);
          expect(end).toBeGreaterThanOrEqual(start);
        }
      }),
      { numRuns: 500 },
    );
  });
});
