import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

const text = (markdown: string) => printedAfter('pages/returns.md', 'Write first.', markdown);

describe('a picture in a text', () => {
  it('is not fetched from another site', () => {
    expect(text('First.\n\nSee ![the bench](https://elsewhere.example/bench.jpg).')).toMatchInlineSnapshot(`
      "
      content/pages/returns.md:9:18 this picture would be fetched from another site [outside-picture]
        9 | See ![the bench](https://elsewhere.example/bench.jpg).
          |                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: a picture of this site, such as /pictures/bench.jpg
        found:    https://elsewhere.example/bench.jpg
        to do:    Put the picture into the folder public and name it by its path there.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(text('![the bench](//elsewhere.example/bench.jpg)')).toContain('[outside-picture]');
    expect(text('![the bench][b]\n\n[b]: HTTP://elsewhere.example/a.jpg')).toContain('[outside-picture]');
  });

  it('may be one of the shop, and a link may lead anywhere', () => {
    expect(text('![the bench](/pictures/bench.jpg) and [more](https://elsewhere.example/)')).toBe('no fault');
    expect(text('`![code](https://elsewhere.example/)`')).toBe('no fault');
  });
});
