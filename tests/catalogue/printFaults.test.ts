import { describe, expect, it } from 'vitest';
import type { ContentFault } from '../../src/catalogue/fault.ts';
import { printFault, printFaults } from '../../src/catalogue/printFaults.ts';

const fault: ContentFault = {
  code: 'wrong-value',
  file: 'content/x.md',
  line: 12,
  column: 4,
  length: 3,
  sourceLine: 'a: bcd',
  path: ['sizes', 0, 'a'],
  expected: 'e',
  received: 'r',
  hint: 'h',
};

describe('a printed fault', () => {
  it('marks a passage behind a tab where it stands', () => {
    expect(printFault({ ...fault, sourceLine: '\ta: bcd', column: 5 })).toMatchInlineSnapshot(`
      "content/x.md:12:5 sizes.0.a: this value is not possible [wrong-value]
        12 | →a: bcd
           |     ^^^
        expected: e
        found:    r
        to do:    h"
    `);
  });

  it('cuts a long line around the caret', () => {
    const sourceLine = `radii: [${'22.5, '.repeat(60)}99]`;
    expect(
      printFault({ ...fault, sourceLine, column: sourceLine.indexOf('99') + 1, length: 2 }),
    ).toMatchInlineSnapshot(`
      "content/x.md:12:369 sizes.0.a: this value is not possible [wrong-value]
        12 | ….5, 22.5, 22.5, 22.5, 22.5, 22.5, 22.5, 99]
           |                                          ^^
        expected: e
        found:    r
        to do:    h"
    `);
  });

  it('lets no control character of the content act in the terminal', () => {
    const text = printFault({
      ...fault,
      sourceLine: '\u001b[31ma\u202e',
      received: '\u0007',
      file: 'content/\u001b.md',
    });
    expect(text).toMatch(/^(?:\n|[^\p{Cc}\u202e])*$/u);
  });

  it('stands above the count of all', () => {
    expect(
      printFaults([fault, { ...fault, file: 'content/y.md' }])
        .split('\n')
        .at(-1),
    ).toBe("2 faults in 2 files of the shop's content. Nothing is built until all are mended.");
  });
});
