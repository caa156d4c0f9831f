import { describe, expect, it } from 'vitest';
import { decodeSource, faultIn, MOST_BYTES } from '../../../src/catalogue/reading/sourceText.ts';
import { file, printed, shopWith, textOf } from '../faultyShop.ts';

const bytes = (...values: number[]) => Uint8Array.from(values);
const dunlin = textOf('frames/dunlin.md');

describe('a content file that is no text', () => {
  it('is refused when it is empty', () => {
    expect(printed(shopWith(file('frames/dunlin.md', '')))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:1:1 the file does not begin with its fields [no-front-matter]
        expected: a line --- first, then the fields, then another line ---
        found:    an empty file
        to do:    Put --- in the first line and --- below the last field; the text for the page comes after that.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is refused when it is binary', () => {
    const picture = bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d);
    expect(printed(shopWith(file('frames/dunlin.md', picture)))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:2:1 this is not a text file [not-text]
        2 | �
          | ^
        expected: a text file in UTF-8 of at most 512 kB
        found:    the control character 0x1a
        to do:    Move the file out of the folder if it is not text, or remove the character.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is refused when it is in another encoding', () => {
    const latin = Uint8Array.from(
      dunlin.replace('Named after', 'Nommé après'),
      (letter) => letter.charCodeAt(0) & 0xff,
    );
    expect(printed(shopWith(file('frames/dunlin.md', latin)))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:31:5 this file is not in UTF-8 [not-utf8]
        31 | Nomm� apr�s a **small** wader.
           |     ^
        expected: a text file in UTF-8 of at most 512 kB
        found:    a byte that is no UTF-8 character
        to do:    Save the file again with the encoding UTF-8.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is refused when it is in UTF-16', () => {
    const wide = new Uint8Array([0xff, 0xfe, ...[...dunlin].flatMap((letter) => [letter.charCodeAt(0), 0])]);
    expect(printed(shopWith(file('frames/dunlin.md', wide)))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:1:1 this file is not in UTF-8 [not-utf8]
        expected: a text file in UTF-8 of at most 512 kB
        found:    a text in UTF-16
        to do:    Save the file again with the encoding UTF-8.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is refused when it has 5 MB, at once', () => {
    const huge = dunlin + 'Very long. '.repeat(500_000);
    expect(printed(shopWith(file('frames/dunlin.md', huge)))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:1:1 this file is too large for a content file [too-large]
        expected: a text file in UTF-8 of at most 512 kB
        found:    more than 512 kB
        to do:    Split the file, or move what is not content out of the folder.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

describe('a text', () => {
  it('loses its byte-order mark and carriage returns, and nothing else', () => {
    const decoded = decodeSource({ path: 'x', bytes: new TextEncoder().encode('\ufeffa: ä\r\nb: 𝄞\rc\n') });
    expect(decoded).toEqual({ ok: true, source: { path: 'x', text: 'a: ä\nb: 𝄞\nc\n' } });
  });

  it('may be exactly as large as the limit', () => {
    expect(decodeSource({ path: 'x', bytes: new Uint8Array(MOST_BYTES).fill(0x20) }).ok).toBe(true);
    expect(decodeSource({ path: 'x', bytes: new Uint8Array(MOST_BYTES + 1).fill(0x20) }).ok).toBe(false);
  });
});

describe('the place of a fault', () => {
  const detail = { code: 'wrong-value', expected: '', received: '', hint: '' } as const;
  const source = { path: 'x', text: 'one\n\nthree: 3\nlast' };

  it.each([
    { start: 0, end: 3, line: 1, column: 1, length: 3, sourceLine: 'one' },
    { start: 3, end: 3, line: 1, column: 4, length: 1, sourceLine: 'one' },
    { start: 4, end: 9, line: 2, column: 1, length: 1, sourceLine: '' },
    { start: 12, end: 13, line: 3, column: 8, length: 1, sourceLine: 'three: 3' },
    { start: 5, end: 99, line: 3, column: 1, length: 8, sourceLine: 'three: 3' },
    { start: 99, end: 99, line: 4, column: 5, length: 1, sourceLine: 'last' },
  ])('at offset $start is line $line, column $column', ({ start, end, ...place }) => {
    expect(faultIn(source, start, end, [], detail)).toMatchObject(place);
  });
});
