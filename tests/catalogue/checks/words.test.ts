import { describe, expect, it } from 'vitest';
import { file, printed, printedAfter, shopWith } from '../faultyShop.ts';

describe('a sentence', () => {
  it('is given once in all files of a language', () => {
    expect(
      printed(shopWith(file('words/en/more.yaml', 'page:\n  title: "{name}"\n'))),
    ).toMatchInlineSnapshot(`
      "
      content/words/en/page.yaml:1:9 page.title: this field is given twice [duplicate-key]
        1 | page: { title: "{name}, optical workshop" }
          |         ^^^^^
        expected: "page.title" once in the words of a language
        found:    it again, after content/words/en/more.yaml
        to do:    Remove one of the two.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(printed(shopWith(file('words/de/page.yaml', 'page:\n  title: "{name}"\n')))).toBe('no fault');
  });

  it('has no brace that is not a slot', () => {
    expect(printedAfter('words/en/page.yaml', '{name}, optical', '{name, optical')).toMatchInlineSnapshot(`
      "
      content/words/en/page.yaml:1:16 page.title: this value is not possible [wrong-value]
        1 | page: { title: "{name, optical workshop" }
          |                ^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: a text whose braces hold the name of a slot, such as {mm}
        found:    the text "{name, optical workshop"
        to do:    Write a text whose braces hold the name of a slot, such as {mm}.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is a text, not a number or a list', () => {
    expect(printed(shopWith(file('words/en/more.yaml', 'a: 3\nb: [x]\nc: { d: }\n')))).toMatchInlineSnapshot(`
      "
      content/words/en/more.yaml:1:4 a: this is the wrong kind of value [wrong-type]
        1 | a: 3
          |    ^
        expected: a text, or a group of texts
        found:    the number 3
        to do:    Put it in quotes: "3".

      content/words/en/more.yaml:2:4 b: this is the wrong kind of value [wrong-type]
        2 | b: [x]
          |    ^^^
        expected: a text, or a group of texts
        found:    the list [x]
        to do:    Write a text, or a group of texts.

      content/words/en/more.yaml:3:6 c.d: this is the wrong kind of value [wrong-type]
        3 | c: { d: }
          |      ^
        expected: a text, or a group of texts
        found:    nothing
        to do:    Write the value behind the colon, in quotes if it begins with #.

      3 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});
