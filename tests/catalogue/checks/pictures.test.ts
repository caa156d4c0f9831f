import { describe, expect, it } from 'vitest';
import { file, printed, shopEdited } from '../faultyShop.ts';

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

// First bytes: PNG, ISO/IEC 15948 clause 5.2; JPEG, ISO/IEC 10918-1 annex B.1; WebP, RFC 9649 section 2.4;
// AVIF, ISO/IEC 23008-12 with brand avif.
const HEADS = {
  png: bytes('\x89PNG\r\n\x1a\n\0\0\0\rIHDR'),
  jpg: bytes('\xff\xd8\xff\xe0\0\x10JFIF'),
  webp: bytes('RIFF\x24\0\0\0WEBPVP8 '),
  avif: bytes('\0\0\0\x20ftypavif\0\0\0\0avifmif1'),
};

const shop = (pictures: string, name = 'dunlin.png', head: Uint8Array = HEADS.png) => [
  ...shopEdited('frames/dunlin.md', 'notOffered:', `pictures:\n  - ${pictures}\nnotOffered:`),
  file(`frames/pictures/${name}`, head),
];
const said = (files: ReturnType<typeof shop>) => printed(files).match(/\[\S+\]|expected: .*|to do: .*/g);

describe('a photograph of a frame', () => {
  it.each(Object.entries(HEADS))('may be a %s', (ending, head) => {
    const name = `dunlin.${ending}`;
    expect(printed(shop(`{ file: ${name}, alt: On a bench., colourway: kelp }`, name, head))).toBe(
      'no fault',
    );
  });

  it('lies in the folder of pictures', () => {
    expect(printed(shop('{ file: dunlim.png, alt: On a bench. }'))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:28:13 pictures.0.file: this picture is not there [missing-picture]
        28 |   - { file: dunlim.png, alt: On a bench. }
           |             ^^^^^^^^^^
        expected: a file in frames/pictures: dunlin.png
        found:    "dunlim.png"
        to do:    Did you mean "dunlin.png"?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('says in words what it shows', () => {
    expect(said(shop('{ file: dunlin.png }'))).toMatchInlineSnapshot(`
      [
        "[missing-field]",
        "expected: alt: what the picture shows, in a few words",
        "to do:    Add a line "alt: ...".",
      ]
    `);
    expect(said(shop('{ file: dunlin.png, alt: " " }'))).toMatchInlineSnapshot(`
      [
        "[wrong-value]",
        "expected: what the picture shows, in a few words",
        "to do:    Write what the picture shows, in a few words.",
      ]
    `);
  });

  it('shows a colourway of the frame, if any', () => {
    expect(said(shop('{ file: dunlin.png, alt: On a bench., colourway: kelb }'))).toMatchInlineSnapshot(`
      [
        "[unknown-reference]",
        "expected: a colourway of this frame: kelp or slate",
        "to do:    Did you mean "kelp"?",
      ]
    `);
  });
});

describe('a file of the folder of pictures', () => {
  const alone = (name: string, head: Uint8Array) =>
    said([...shop('{ file: dunlin.png, alt: x }'), file(`frames/pictures/${name}`, head)]);

  it('is the picture that its ending says', () => {
    expect(alone('other.jpg', HEADS.png)).toMatchInlineSnapshot(`
      [
        "[not-a-picture]",
        "expected: a jpeg picture, as the ending says",
        "to do:    Rename it so that it ends with .png.",
      ]
    `);
    expect(alone('text.jpg', bytes('a text'))).toMatchInlineSnapshot(`
      [
        "[not-a-picture]",
        "expected: a jpeg picture, as the ending says",
        "to do:    Save it again as JPEG, PNG, WebP or AVIF.",
      ]
    `);
  });

  it('has a name that can stand in an address', () => {
    expect(alone('IMG 0042.JPG', HEADS.jpg)).toMatchInlineSnapshot(`
      [
        "[bad-file-name]",
        "expected: a name of small letters a-z, digits and hyphens, then .jpg, .jpeg, .png, .webp or .avif",
        "to do:    Rename the file to img-0042.jpg.",
      ]
    `);
    expect(alone('bench.heic', HEADS.jpg)).toMatchInlineSnapshot(`
      [
        "[bad-file-name]",
        "expected: a name of small letters a-z, digits and hyphens, then .jpg, .jpeg, .png, .webp or .avif",
        "to do:    Save it as JPEG, PNG, WebP or AVIF, or move it out of the folder.",
      ]
    `);
  });

  it('is not larger than the build needs', () => {
    const large = { path: 'content/frames/pictures/large.png', bytes: HEADS.png, sizeBytes: 20_000_000 };
    expect(said([...shop('{ file: dunlin.png, alt: x }'), large])).toMatchInlineSnapshot(`
      [
        "[too-large]",
        "expected: a picture of at most 12 MB",
        "to do:    Save it smaller: 2000 pixels of width are enough.",
      ]
    `);
  });
});
