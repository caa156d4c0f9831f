import { describe, expect, it } from 'vitest';
import { file, printed, printedAfter, shopEdited, shopWith, textOf } from '../faultyShop.ts';

const hard = textOf('lenses/coatings/hard.md');

describe('an option that no package can ever use', () => {
  it('is a material that no design is made in', () => {
    expect(
      printedAfter('lenses/designs/single-vision.md', 'materials: all', 'materials: [standard]'),
    ).toMatchInlineSnapshot(`
      "
      content/lenses/materials/tough.md:2:7 name: no frame and no pair of lenses can ever use this option [never-usable]
        2 | name: Tough plastic
          |       ^^^^^^^^^^^^^
        expected: a package and a frame in which the material "tough" can be had
        found:    none, by the lists of materials, designs and tints, the limits, mountings and face forms of all files
        to do:    Name "tough" in the lists of the options that it goes with, loosen a limit, or remove the file.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is a coating on nothing', () => {
    expect(
      printed(shopWith(file('lenses/coatings/lost.md', hard.replace('materials: all', 'materials: []')))),
    ).toContain(
      'content/lenses/coatings/lost.md:2:7 name: no frame and no pair of lenses can ever use this option [never-usable]',
    );
  });

  it('is a design that is too tall for every frame', () => {
    expect(printedAfter('lenses/designs/progressive.md', 'lengthMm: 14', 'lengthMm: 30')).toContain(
      '[never-usable]',
    );
    expect(printedAfter('lenses/designs/progressive.md', 'faceFormDeg: 10', 'faceFormDeg: 3')).toContain(
      '[never-usable]',
    );
  });

  it('is a tint whose limits contradict each other', () => {
    const limits =
      'limits:\n  - { onlyWith: { material: [tough] }, because: x }\n  - { notWith: { material: [tough] }, because: y }';
    expect(printedAfter('lenses/tints/brown.md', 'designs: all', `designs: all\n${limits}`)).toContain(
      'lenses/tints/brown.md',
    );
    expect(
      printedAfter(
        'lenses/tints/brown.md',
        'designs: all',
        `designs: all\n${limits.replaceAll(' x', ' x, level: caution')}`,
      ),
    ).toBe('no fault');
  });

  it('is none where a limit only asks for one wearer or one frame', () => {
    const only = (what: string) =>
      printedAfter(
        'lenses/coatings/hard.md',
        'tints: all',
        `tints: all\nlimits: [{ onlyWith: { ${what} }, because: x }]`,
      );
    expect(only('wearer: [one-eyed]')).toBe('no fault');
    expect(only('frame: [tern]')).toBe('no fault');
    expect(only('mounting: [grooved]')).toContain('[never-usable]');
  });

  it('is not named while another fault may be the reason', () => {
    const files = shopEdited('lenses/designs/single-vision.md', 'materials: all', 'materials: [standrad]');
    expect(printed(files)).toContain('[unknown-reference]');
    expect(
      printed(shopEdited('lenses/designs/single-vision.md', 'kind: single-vision', 'kind: singel-vision')),
    ).not.toContain('never-usable');
  });
});
