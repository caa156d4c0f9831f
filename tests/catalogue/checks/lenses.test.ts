import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

const material = (passage: string, by: string) => printedAfter('lenses/materials/standard.md', passage, by);
const design = (passage: string, by: string) => printedAfter('lenses/designs/progressive.md', passage, by);

describe('a design', () => {
  it('has what its kind needs', () => {
    expect(
      printedAfter('lenses/designs/single-vision.md', 'kind: single-vision', 'kind: bifocal'),
    ).toMatchInlineSnapshot(`
      "
      content/lenses/designs/single-vision.md:6:7 kind: these fields do not go together [parts-disagree]
        6 | kind: bifocal
          |       ^^^^^^^
        expected: segment besides kind: bifocal
        found:    no segment
        to do:    Add segment, or change kind.

      content/lenses/designs/single-vision.md:6:7 kind: these fields do not go together [parts-disagree]
        6 | kind: bifocal
          |       ^^^^^^^
        expected: addD besides kind: bifocal
        found:    no addD
        to do:    Add addD, or change kind.

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has no part of another kind', () => {
    expect(
      design('kind: progressive', 'kind: single-vision').match(/\S+: these fields do not go together/g),
    ).toEqual(['addD: these fields do not go together', 'corridor: these fields do not go together']);
  });

  it('without power is for use none alone', () => {
    expect(design('uses: [all]', 'uses: [all, none]')).toContain('uses other than none');
  });
});

describe('a material', () => {
  it('has stock forms in ascending order', () => {
    expect(material('toD: -2', 'toD: 4')).toMatchInlineSnapshot(`
      "
      content/lenses/materials/standard.md:23:16 stock.0.forms.1.toD: these are not in ascending order [not-ascending]
        23 |       - { toD: 4, baseCurveD: 6, centreThicknessMm: 6 }
           |                ^
        expected: spherical equivalents in ascending order, above 4
        found:    4
        to do:    Sort the list, and leave out what is there twice.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has stock forms up to the strongest plus of its range', () => {
    expect(material('sphereD: [-6, 4]', 'sphereD: [-6, 6]')).toMatchInlineSnapshot(`
      "
      content/lenses/materials/standard.md:23:16 stock.0.forms.1.toD: these fields do not go together [parts-disagree]
        23 |       - { toD: 4, baseCurveD: 6, centreThicknessMm: 6 }
           |                ^
        expected: a last form up to 6 D at least, since sphereD reaches it
        found:    4
        to do:    Add a form, or shorten sphereD.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('says how thick it must be where it is drilled or grooved', () => {
    expect(material('mountings: [full]', 'mountings: [full, drilled]')).toMatchInlineSnapshot(`
      "
      content/lenses/materials/standard.md:12:12 mountings: these fields do not go together [parts-disagree]
        12 | mountings: [full, drilled]
           |            ^^^^^^^^^^^^^^^
        expected: leastMm.hole and the mounting drilled, both or neither
        found:    drilled without leastMm.hole
        to do:    Add what is missing, or remove the other.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has nd and ne the right way round', () => {
    expect(material('nd: 1.498\nne: 1.5', 'nd: 1.5\nne: 1.498')).toMatchInlineSnapshot(`
      "
      content/lenses/materials/standard.md:7:5 ne: these fields do not go together [parts-disagree]
        7 | ne: 1.498
          |     ^^^^^
        expected: at least nd, 1.5: the index grows towards the blue
        found:    1.498
        to do:    Exchange nd and ne if they are mixed up.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has base curves and diameters in ascending order', () => {
    const tough = (passage: string, by: string) => printedAfter('lenses/materials/tough.md', passage, by);
    expect(tough('baseCurves: [2, 4,', 'baseCurves: [4, 4,')).toContain(
      'surfaced.baseCurves.1: these are not in ascending order',
    );
    expect(tough('[65, 70]', '[70, 65]')).toContain(
      'surfaced.diametersMm.1: these are not in ascending order',
    );
  });
});

describe('a tint', () => {
  it('that darkens declares its states with their temperature', () => {
    expect(printedAfter('lenses/tints/brown.md', 'kind: solid', 'kind: photochromic')).toMatchInlineSnapshot(`
      "
      content/lenses/tints/brown.md:7:9 states: these fields do not go together [parts-disagree]
        7 | states: [{ name: brown, transmittance: 0.15, colour: "#6b4a2b" }]
          |         ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: 2 states of a photochromic tint: clear and dark at least
        found:    1
        to do:    Add the states.

      content/lenses/tints/brown.md:7:10 states.0: these fields do not go together [parts-disagree]
        7 | states: [{ name: brown, transmittance: 0.15, colour: "#6b4a2b" }]
          |          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: temperatureC in each state of a photochromic tint
        found:    none
        to do:    Write the lens temperature, such as temperatureC: 23.

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('of the kind polarised is polarised', () => {
    expect(
      printedAfter('lenses/tints/brown.md', 'kind: solid', 'kind: polarised\npolarised: false'),
    ).toContain('[parts-disagree]');
  });
});

describe('a coating', () => {
  it('of a face says what it leaves of the reflection', () => {
    expect(printedAfter('lenses/coatings/hard.md', 'faces: none', 'faces: both')).toMatchInlineSnapshot(`
      "
      content/lenses/coatings/hard.md:2:1 residualReflectance: these fields do not go together [parts-disagree]
        2 | name: Hard
          | ^^^^
        expected: the reflectance left on a coated face, such as 0.01
        found:    nothing
        to do:    Change it, or change faces.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});
