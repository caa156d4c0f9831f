import { describe, expect, it } from 'vitest';
import { splitFrontMatter } from '../../../src/catalogue/reading/frontMatter.ts';
import { file, printed, shopWith, textOf } from '../faultyShop.ts';

const dunlin = textOf('frames/dunlin.md');

describe('a file that does not begin with its fields', () => {
  it('is told where the line --- belongs', () => {
    expect(printed(shopWith(file('frames/dunlin.md', dunlin.replace('---\n', ''))))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:1:1 the file does not begin with its fields [no-front-matter]
        1 | model: Dunlin
          | ^^^^^^^^^^^^^
        expected: a line --- first, then the fields, then another line ---
        found:    other text
        to do:    Put --- in the first line and --- below the last field; the text for the page comes after that.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is told when the closing line is missing', () => {
    expect(
      printed(shopWith(file('frames/dunlin.md', dunlin.replace('\n---\n\nNamed', '\n\nNamed')))),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:1:1 the fields are not closed off [open-front-matter]
        1 | ---
          | ^^^
        expected: a line --- below the last field
        found:    no other line of just ---
        to do:    Add a line --- (not indented) below the last field.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is told when the fields are there and empty', () => {
    expect(printed(shopWith(file('pages/returns.md', '---\n---\nText.\n')))).toMatchInlineSnapshot(`
      "
      content/pages/returns.md:2:1 title: a field is missing [missing-field]
        2 | ---
          | ^
        expected: title: a text
        found:    nothing
        to do:    Add a line "title: ...".

      content/pages/returns.md:2:1 description: a field is missing [missing-field]
        2 | ---
          | ^
        expected: description: a text
        found:    nothing
        to do:    Add a line "description: ...".

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

describe('a split file', () => {
  it.each([
    ['---\na: 1\n---\nbody', 'a: 1\n', '\nbody'],
    ['--- \na: 1\n---\t\n', 'a: 1\n', '\n'],
    ['---\na: 1\n---', 'a: 1\n', ''],
    ['---\n---\n', '', '\n'],
    ['---\na: |\n  ---\n---\n\n---\n', 'a: |\n  ---\n', '\n\n---\n'],
  ])('%j has its fields and its body', (text, yaml, body) => {
    const split = splitFrontMatter({ path: 'x.md', text });
    expect(split.ok && { yaml: split.parts.yaml, body: split.parts.body }).toEqual({ yaml, body });
    expect(split.ok && text.slice(split.parts.yamlAt).startsWith(yaml)).toBe(true);
  });
});
