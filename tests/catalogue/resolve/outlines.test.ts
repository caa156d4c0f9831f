import { describe, expect, it } from 'vitest';
import { readCatalogue } from '../../../src/catalogue/readCatalogue.ts';
import { centreTrace } from '../../../src/catalogue/resolve/outline.ts';
import { box } from '../../../src/optics/outline.ts';
import { goodShop, printedAfter } from '../faultyShop.ts';

describe('the outline of a size', () => {
  it('cannot have any ED', () => {
    expect(printedAfter('frames/dunlin.md', 'ed: 48.5', 'ed: 62')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:23:9 sizes.0.ed: no outline of this family has these measurements [impossible-outline]
        23 |     ed: 62
           |         ^^
        expected: an ed from 48 to 55.6 mm: round, 48 by 42 mm
        found:    62 mm
        to do:    Measure again; 55.6 is the nearest that the family reaches. Or choose another family, or trace the lens.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(printedAfter('frames/dunlin.md', 'ed: 48.5', 'ed: 47')).toContain('[impossible-outline]');
  });

  it('that was traced agrees with A, B and ED', () => {
    expect(
      printedAfter('frames/tern.md', 'b: 44, dbl: 18, ed: 44', 'b: 43, dbl: 18, ed: 44'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/tern.md:21:28 sizes.0.b: the traced outline disagrees with the measurements [trace-disagrees]
        21 |   - { id: 44-18, a: 44, b: 43, dbl: 18, ed: 44, temple: 140, bridge: pads, outline: { traced: ring-4…
           |                            ^^
        expected: b within 0.1 mm of the traced outline ring-44: 44 mm
        found:    43 mm
        to do:    Write 44, name the outline of this size, or look for a slip in outlines/ring-44.yaml.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(printedAfter('frames/tern.md', 'b: 44, dbl', 'b: 44.1, dbl')).toBe('no fault');
  });

  it('holds every hole with its rim', () => {
    expect(
      printedAfter('frames/tern.md', 'insetMm: 4, aboveCentreMm: 4,', 'insetMm: 1, aboveCentreMm: 4,'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/tern.md:9:7 mounting.drilled.0: this hole is not inside the lens [hole-outside]
        9 |     - { side: nasal, insetMm: 1, aboveCentreMm: 4, diameterMm: 1.4 }
          |       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: a hole whose whole rim is inside the lens of every size
        found:    one that cuts the edge in size 44-18
        to do:    Enlarge insetMm, bring aboveCentreMm nearer to 0, or mend the outline.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(
      printedAfter(
        'frames/tern.md',
        '{ side: temporal, insetMm: 4, aboveCentreMm: 4',
        '{ side: temporal, insetMm: 4, aboveCentreMm: 13',
      ),
    ).toContain('mounting.drilled.1');
  });

  it('that was traced is one that a lens can have', () => {
    const radii = 'radiiMm:\n  - 22\n  - 22\n  - 22\n';
    expect(
      printedAfter('outlines/ring-44.yaml', radii, 'radiiMm:\n  - 22\n  - 60\n  - 22\n'),
    ).toMatchInlineSnapshot(`
      "
      content/outlines/ring-44.yaml:4:5 radiiMm.1: this is not the outline of a lens [bad-trace]
        4 |   - 60
          |     ^^
        expected: a radius in line with those beside it, about 22.0 mm
        found:    60
        to do:    Measure it again. Decimals stand behind a point: a decimal comma makes two radii of one.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(printedAfter('outlines/ring-44.yaml', radii, 'radiiMm:\n')).toMatchInlineSnapshot(`
      "
      content/outlines/ring-44.yaml:3:3 radiiMm: this value is not possible [wrong-value]
        3 |   - 22
          |   ^^^^
        expected: a list of 36 to 1440 radii in mm
        found:    a list of 33
        to do:    Write a list of 36 to 1440 radii in mm.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has the box and ED of its size, by 360 radii', () => {
    const reading = readCatalogue(goodShop());
    const sizes = reading.ok ? reading.catalogue.frames.flatMap((frame) => frame.sizes) : [];
    expect(sizes).toHaveLength(2);
    for (const size of sizes) {
      const { aMm, bMm, edMm } = box(size.outline);
      expect(size.outline.radiiMm).toHaveLength(360);
      // 0.01 mm: the radii are rounded to a micrometre, a fitted ED is met to 0.01 mm.
      expect(
        Math.max(Math.abs(aMm - size.aMm), Math.abs(bMm - size.bMm), Math.abs(edMm - size.edMm)),
      ).toBeLessThan(0.02);
    }
  });
});

describe('a trace', () => {
  it('that was taken from another middle is brought to the boxed centre', () => {
    // A circle of radius 22 mm about (3, -2), seen from the origin.
    const radii = Array.from({ length: 720 }, (_, index) => {
      const angle = (index * Math.PI) / 360;
      const along = 3 * Math.cos(angle) - 2 * Math.sin(angle);
      return along + Math.sqrt(along ** 2 - 13 + 22 ** 2);
    });
    const centred = centreTrace(radii);
    expect(centred).not.toBeNull();
    for (const radius of centred?.radiiMm ?? []) expect(Math.abs(radius - 22)).toBeLessThan(0.005);
  });
});
