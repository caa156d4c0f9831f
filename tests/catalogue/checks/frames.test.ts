import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

const frame = (passage: string, by: string) => printedAfter('frames/dunlin.md', passage, by);

describe('a frame', () => {
  it('has sizes whose names agree with a and dbl', () => {
    expect(frame('dbl: 20', 'dbl: 18')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:19:9 sizes.0.id: the name of the size disagrees with its measurements [size-disagrees]
        19 |   - id: 48-20
           |         ^^^^^
        expected: 48-18, from a 48 and dbl 18, each rounded to whole mm
        found:    48-20
        to do:    Write 48-18, or mend a or dbl.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    // Rounded to whole millimetres, as temples are stamped (common practice).
    expect(frame('dbl: 20', 'dbl: 20.4')).toBe('no fault');
  });

  it('keeps what tells two bridges of one size apart', () => {
    expect(frame('- id: 48-20', '- id: 48-21-keyhole').match(/to do: .*/)?.[0]).toBe(
      'to do:    Write 48-20-keyhole, or mend a or dbl.',
    );
  });

  it('names its own sizes and colourways as not offered', () => {
    expect(
      frame('{ size: 48-20, colourway: slate,', '{ size: 48-21, colourway: salte,'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:28:13 notOffered.0.size: this names something that the shop does not have [unknown-reference]
        28 |   - { size: 48-21, colourway: salte, because: Not made. }
           |             ^^^^^
        expected: a size of this frame: 48-20
        found:    "48-21"
        to do:    Did you mean "48-20"?

      content/frames/dunlin.md:28:31 notOffered.0.colourway: this names something that the shop does not have [unknown-reference]
        28 |   - { size: 48-21, colourway: salte, because: Not made. }
           |                               ^^^^^
        expected: a colourway of this frame: kelp or slate
        found:    "salte"
        to do:    Did you mean "slate"?

      2 faults in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('can be had in some size and colourway', () => {
    expect(
      frame(
        'because: Not made. }',
        'because: Not made. }\n  - { size: 48-20, colourway: kelp, because: Not made. }',
      ),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:28:3 notOffered: no frame and no pair of lenses can ever use this option [never-usable]
        28 |   - { size: 48-20, colourway: slate, because: Not made. }
           |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: at least one size in one colourway that can be had
        found:    every size in every colourway is named here
        to do:    Remove a line of notOffered.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has a rim where it says so, and none where it is drilled', () => {
    expect(frame('rimDepthMm: 4', 'rimDepthMm: 0')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:8:13 rimDepthMm: these fields do not go together [parts-disagree]
        8 | rimDepthMm: 0
          |             ^
        expected: the depth of the rim, above 0 mm, since the mounting is full
        found:    0
        to do:    Measure the rim from front to back.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(printedAfter('frames/tern.md', 'rimCoverMm: 0', 'rimCoverMm: 0.5')).toContain('[parts-disagree]');
  });
});
