import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

const frame = (passage: string, by: string) => printedAfter('frames/dunlin.md', passage, by);

describe('a field', () => {
  it('that is not known is told which was meant', () => {
    expect(frame('colourways:', 'colorways:')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:15:1 colorways: this field is not known [unknown-key]
        15 | colorways:
           | ^^^^^^^^^
        expected: one of the fields model, collection, summary, price, material, wearer, sun, mounting, rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD, massG, comesFitted, inTheBox, colourways, sizes, notOffered, pictures, added, changed, formerIds
        found:    "colorways"
        to do:    Did you mean "colourways"?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('that is not known deep inside is shown at its own place', () => {
    expect(frame('temple: 145', 'templeLength: 145')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:24:5 sizes.0.templeLength: this field is not known [unknown-key]
        24 |     templeLength: 145
           |     ^^^^^^^^^^^^
        expected: one of the fields id, a, b, dbl, ed, temple, bridge, outline, priceDifference
        found:    "templeLength"
        to do:    Did you mean "temple"?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('that is missing is shown at the first field of its group', () => {
    expect(printedAfter('shop.yaml', '  email: bench@quay.example\n', '')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:9:3 contact.email: a field is missing [missing-field]
        9 |   lines: [Quay Optical, 1 Slip Road]
          |   ^^^^^
        expected: email: an e-mail address
        found:    nothing
        to do:    Add a line "email: ...".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('that is empty asks for its value', () => {
    expect(frame('massG: 22', 'massG:')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:12:1 massG: this is the wrong kind of value [wrong-type]
        12 | massG:
           | ^^^^^
        expected: a number from 1 to 100 g
        found:    nothing
        to do:    Write the value behind the colon, in quotes if it begins with #.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with a number in quotes is told to take them off', () => {
    expect(frame('a: 48\n', 'a: "48"\n')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:20:8 sizes.0.a: this is the wrong kind of value [wrong-type]
        20 |     a: "48"
           |        ^^^^
        expected: a number from 25 to 80 mm
        found:    the text "48"
        to do:    Write 48, without quotes and without a unit.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it.each(['4o', '4o8', '48O'])('with a letter that may be a digit is told no number: %s', (typed) => {
    expect(frame('a: 48\n', `a: ${typed}\n`)).toContain('Write digits and a point only, without quotes.');
  });

  it('with a decimal comma and a unit is told what to write', () => {
    expect(frame('ed: 48.5', 'ed: 48,5 mm')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:23:9 sizes.0.ed: this is the wrong kind of value [wrong-type]
        23 |     ed: 48,5 mm
           |         ^^^^^^^
        expected: a number from 25 to 100 mm
        found:    the text "48,5 mm"
        to do:    Write 48.5, without quotes and without a unit.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with yes is told to write true', () => {
    expect(frame('mounting: full', 'mounting: full\nsun: yes')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:8:6 sun: this is the wrong kind of value [wrong-type]
        8 | sun: yes
          |      ^^^
        expected: true or false
        found:    the text "yes"
        to do:    Write true.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with a number for a text is told to put it in quotes', () => {
    expect(frame('model: Dunlin', 'model: 0815')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:2:8 model: this is the wrong kind of value [wrong-type]
        2 | model: 0815
          |        ^^^^
        expected: a text
        found:    the number 0815
        to do:    Put it in quotes: "0815".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with one value for a list is told to put it in brackets', () => {
    expect(frame('inTheBox: [Case, Cloth]', 'inTheBox: Case')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:14:11 inTheBox: this is the wrong kind of value [wrong-type]
        14 | inTheBox: Case
           |           ^^^^
        expected: a list
        found:    the text "Case"
        to do:    Write [Case].

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with a misspelt word is told which was meant', () => {
    expect(frame('bridge: keyhole', 'bridge: keyhle')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:25:13 sizes.0.bridge: this value is not possible [wrong-value]
        25 |     bridge: keyhle
           |             ^^^^^^
        expected: saddle, keyhole or pads
        found:    the text "keyhle"
        to do:    Did you mean keyhole?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with a number out of its range is told the range', () => {
    expect(frame('a: 48\n', 'a: 480\n')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:20:8 sizes.0.a: this value is not possible [wrong-value]
        20 |     a: 480
           |        ^^^
        expected: a number from 25 to 80 mm
        found:    the number 480
        to do:    Write a number from 25 to 80 mm.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with infinity is told that a number is wanted', () => {
    expect(frame('massG: 22', 'massG: .inf')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:12:8 massG: this is the wrong kind of value [wrong-type]
        12 | massG: .inf
           |        ^^^^
        expected: a number from 1 to 100 g
        found:    the number .inf
        to do:    Write a number from 1 to 100 g.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('of two forms is explained by the one that was meant', () => {
    expect(
      frame('mounting: full', 'mounting: { drilled: [{ side: nasal, insetMm: 4, aboveCentreMm: 4 }] }'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:7:22 mounting.drilled: this value is not possible [wrong-value]
        7 | mounting: { drilled: [{ side: nasal, insetMm: 4, aboveCentreMm: 4 }] }
          |                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: a list of at least 2
        found:    the list [{ side: nasal, insetMm: 4, aboveCentreMm: 4 }]
        to do:    Write a list of at least 2.

      content/frames/dunlin.md:7:25 mounting.drilled.0.diameterMm: a field is missing [missing-field]
        7 | mounting: { drilled: [{ side: nasal, insetMm: 4, aboveCentreMm: 4 }] }
          |                         ^^^^
        expected: diameterMm: a number from 0.5 to 4 mm
        found:    nothing
        to do:    Add a line "diameterMm: ...".

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(frame('mounting: full', 'mounting: ful')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:7:11 mounting: this is the wrong kind of value [wrong-type]
        7 | mounting: ful
          |           ^^^
        expected: full, grooved or { drilled: [holes] }
        found:    the text "ful"
        to do:    Did you mean full?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('that an anchor repeats is shown where the value stands', () => {
    expect(frame('inTheBox: [Case, Cloth]', 'inTheBox: &box [Case, 7]\nnote: *box')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:14:23 inTheBox.1: this is the wrong kind of value [wrong-type]
        14 | inTheBox: &box [Case, 7]
           |                       ^
        expected: a text
        found:    the number 7
        to do:    Put it in quotes: "7".

      content/frames/dunlin.md:15:1 note: this field is not known [unknown-key]
        15 | note: *box
           | ^^^^
        expected: one of the fields model, collection, summary, price, material, wearer, sun, mounting, rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD, massG, comesFitted, inTheBox, colourways, sizes, notOffered, pictures, added, changed, formerIds
        found:    "note"
        to do:    Remove it, or use one of the fields above.

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

describe('several faults of one file', () => {
  it('are all told, in the order of the file', () => {
    const text = frame(
      'price: "149.00"\nmaterial: Cellulose acetate\nmounting: full',
      'price: 149\nmaterial: 3\nmounting: fulll\nwaerer: child',
    );
    expect(text.match(/content\/frames\/dunlin\.md:\d+:\d+ \S+/g)).toEqual([
      'content/frames/dunlin.md:5:8 price:',
      'content/frames/dunlin.md:6:11 material:',
      'content/frames/dunlin.md:7:11 mounting:',
      'content/frames/dunlin.md:8:1 waerer:',
    ]);
  });
});
