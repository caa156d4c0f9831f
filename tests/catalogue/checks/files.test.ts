import { describe, expect, it } from 'vitest';
import { file, goodShop, printed, printedAfter, shopWith, shopWithout } from '../faultyShop.ts';

describe('a shop', () => {
  it('has a shop.yaml', () => {
    expect(printed(shopWithout('shop.yaml'))).toMatchInlineSnapshot(`
      "
      content/shop.yaml:1:1 a file is missing [missing-file]
        expected: the file about the shop
        found:    nothing
        to do:    Add the file; the demonstration shop has one to copy.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has the words of its language', () => {
    expect(printedAfter('shop.yaml', 'language: en', 'language: de')).toMatchInlineSnapshot(`
      "
      content/words/de:1:1 a file is missing [missing-file]
        expected: the words of the shop's language, such as words/de/page.yaml
        found:    nothing
        to do:    Add the file; the demonstration shop has one to copy.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has a frame, a design and a material', () => {
    const text = printed(goodShop().filter(({ path }) => /shop\.yaml|words|pages/.test(path)));
    expect(text.match(/^content\S+ a file is missing/gm)).toEqual([
      'content/frames:1:1 a file is missing',
      'content/lenses/designs:1:1 a file is missing',
      'content/lenses/materials:1:1 a file is missing',
    ]);
    expect(printed([])).toContain('content/shop.yaml:1:1');
  });
});

describe('a page', () => {
  it('has a text', () => {
    expect(printedAfter('pages/returns.md', '\nWrite first.\n', '')).toMatchInlineSnapshot(`
      "
      content/pages/returns.md:5:1 the text below the fields is missing [empty-body]
        5 | ---
          | ^^^
        expected: the text of the page below its fields
        found:    nothing
        to do:    Write the text below the second line ---.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('does not stand at the address of another', () => {
    const page = '---\ntitle: Frames\ndescription: All.\n---\nAll.\n';
    expect(printed(shopWith(file('pages/frames.md', page)))).toMatchInlineSnapshot(`
      "
      content/pages/frames.md:1:1 another page of the site has this address [taken-address]
        expected: a file name other than 404, 500, basket, collections, feeds, frames, frames-by, index, lenses, measuring-rule, order, promotions and 4 more
        found:    "frames.md"
        to do:    Rename the file.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

describe('two files', () => {
  it('whose names differ in case alone are one on some machines', () => {
    const frames = goodShop().filter(({ path }) => path.endsWith('dunlin.md'));
    const twin = frames.map(({ bytes }) => ({ path: 'content/frames/Dunlin.md', bytes }));
    expect(printed([...goodShop(), ...twin])).toMatchInlineSnapshot(`
      "
      content/frames/Dunlin.md:1:1 two files have the same id [duplicate-file]
        expected: names that differ in more than small and capital letters
        found:    "content/frames/Dunlin.md" besides "content/frames/dunlin.md"
        to do:    Rename one of the two, or remove it.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});
