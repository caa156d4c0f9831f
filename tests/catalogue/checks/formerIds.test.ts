import { describe, expect, it } from 'vitest';
import { printFaults } from '../../../src/catalogue/printFaults.ts';
import { readCatalogue } from '../../../src/catalogue/readCatalogue.ts';
import { file, printed, shopEdited, textOf } from '../faultyShop.ts';

const withFields = (...lines: string[]) =>
  shopEdited('frames/dunlin.md', 'notOffered:', [...lines, 'notOffered:'].join('\n'));
const first = (files: ReturnType<typeof withFields>) => printed(files).match(/expected: .*\n.*\n.*/)?.[0];

describe('a promotion', () => {
  it('may name a frame as it was called, and the owner is told', () => {
    const autumn = textOf('promotions/autumn.md').replace(
      /scope:.*/,
      'scope: { frames: [old-dunlin, tern] }',
    );
    const reading = readCatalogue([
      ...withFields('formerIds: [old-dunlin]').filter(({ path }) => !path.endsWith('autumn.md')),
      file('promotions/autumn.md', autumn),
    ]);
    if (!reading.ok) throw new Error(printFaults(reading.faults));
    const promotion = reading.catalogue.promotions.find(({ id }) => id === 'autumn');
    expect(promotion?.scope.frames).toEqual(['dunlin', 'tern']);
    expect(reading.notes.map(({ file, received }) => [file, received])).toEqual([
      ['content/promotions/autumn.md', '"old-dunlin"'],
    ]);
  });
});

describe('a former id', () => {
  it('is kept with its frame, with the days that the frame tells', () => {
    const reading = readCatalogue(
      withFields('formerIds: [old-dunlin]', 'added: 2026-01-05', 'changed: 2026-03-01'),
    );
    expect(reading.ok && reading.catalogue.frames.find(({ id }) => id === 'dunlin')).toMatchObject({
      formerIds: ['old-dunlin'],
      added: '2026-01-05',
      changed: '2026-03-01',
    });
  });

  it('is not the id of a frame that is there', () => {
    expect(printed(withFields('formerIds: [tern]'))).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:27:13 formerIds.0: this id is used twice [duplicate-id]
        27 | formerIds: [tern]
           |             ^^^^
        expected: an id that no other frame has or had
        found:    "tern", which is a frame of the shop
        to do:    Remove it, or rename the file frames/tern.md if that frame is gone.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(first(withFields('formerIds: [dunlin]'))).toMatchInlineSnapshot(`
      "expected: an id that no other frame has or had
        found:    "dunlin", its own id
        to do:    Remove it: the file is still called that."
    `);
  });

  it('belongs to one frame', () => {
    const tern = textOf('frames/tern.md').replace('model:', 'formerIds: [old-wader]\nmodel:');
    const files = withFields('formerIds: [old-wader]').filter(({ path }) => !path.endsWith('tern.md'));
    expect(first([...files, file('frames/tern.md', tern)])).toMatchInlineSnapshot(`
      "expected: an id that no other frame has or had
        found:    "old-wader", which frames/dunlin claims as well
        to do:    Leave it to the frame that was called so last."
    `);
    expect(first(withFields('formerIds: [old-wader, old-wader]'))).toMatchInlineSnapshot(`
      "expected: an id that no other frame has or had
        found:    "old-wader", which frames/dunlin claims as well
        to do:    Leave it to the frame that was called so last."
    `);
  });
});

it('a frame changes on the day it is added or later', () => {
  expect(first(withFields('added: 2026-03-02', 'changed: 2026-03-01'))).toMatchInlineSnapshot(`
    "expected: a day from 2026-03-02 on, when the frame was added
      found:    2026-03-01
      to do:    Exchange added and changed, or mend the year."
  `);
  expect(printed(withFields('added: 2026-03-02', 'changed: 2026-03-02'))).toBe('no fault');
});
