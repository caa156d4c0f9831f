import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeFile, slug } from '../../../src/catalogue/reading/folders.ts';
import { ID_FORM } from '../../../src/catalogue/schema/fields.ts';
import { file, printed, shopWith, textOf } from '../faultyShop.ts';

const dunlin = textOf('frames/dunlin.md');

describe('a file that nothing reads', () => {
  it('is told by which ending it would be read', () => {
    expect(printed(shopWith(file('frames/knot.markdown', dunlin)))).toMatchInlineSnapshot(`
      "
      content/frames/knot.markdown:1:1 nothing reads this file [unknown-file]
        expected: shop.yaml, or a file in frames, outlines, lenses/designs, lenses/materials, lenses/tints, lenses/coatings, promotions, pages, frames/pictures, words/<language>
        found:    "frames/knot.markdown"
        to do:    Rename it so that it ends with .md, or move it out of the folder.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is told which folder was meant', () => {
    expect(printed(shopWith(file('frame/knot.md', dunlin)))).toMatchInlineSnapshot(`
      "
      content/frame/knot.md:1:1 nothing reads this file [unknown-file]
        expected: shop.yaml, or a file in frames, outlines, lenses/designs, lenses/materials, lenses/tints, lenses/coatings, promotions, pages, frames/pictures, words/<language>
        found:    "frame/knot.md"
        to do:    Did you mean the folder content/frames?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is told what a name may hold', () => {
    expect(printed(shopWith(file('frames/Große Möwe.md', dunlin)))).toMatchInlineSnapshot(`
      "
      content/frames/Große Möwe.md:1:1 the file name cannot be an id [bad-file-name]
        expected: a name of small letters a-z, digits and hyphens, then .md
        found:    "Große Möwe.md"
        to do:    Rename the file to grosse-moewe.md.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is told what shop.yaml is called', () => {
    expect(printed(shopWith(file('shop.yml', 'name: x\n')))).toMatchInlineSnapshot(`
      "
      content/shop.yml:1:1 nothing reads this file [unknown-file]
        expected: shop.yaml, or a file in frames, outlines, lenses/designs, lenses/materials, lenses/tints, lenses/coatings, promotions, pages, frames/pictures, words/<language>
        found:    "shop.yml"
        to do:    Rename it to shop.yaml.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

describe('the place of a file', () => {
  it.each([
    ['shop.yaml', { kind: 'shop' }],
    ['frames/dunlin.md', { kind: 'frames', id: 'dunlin' }],
    ['lenses/designs/bifocal-28.md', { kind: 'designs', id: 'bifocal-28' }],
    ['words/de/Seite und Knöpfe.yaml', { kind: 'words', language: 'de' }],
    ['.DS_Store', { kind: 'ignored' }],
    ['frames/.dunlin.md.swp', { kind: 'ignored' }],
    ['frames/dunlin.md~', { kind: 'ignored' }],
    ['frames/Thumbs.db', { kind: 'ignored' }],
  ])('%s is known', (path, placed) => {
    expect(placeFile('content', path)).toEqual(placed);
  });

  it('law: a name made into an id is an id or nothing, and an id stays as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        const id = slug(name);
        expect(id === '' || ID_FORM.test(id)).toBe(true);
        expect(slug(id)).toBe(id);
      }),
    );
    // Typed on one system, an umlaut is one character, on another a letter and its dots.
    expect(slug('Mo\u0308we')).toBe(slug('Möwe'));
  });
});
