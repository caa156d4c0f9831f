import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import { readCatalogue } from '../../../src/catalogue/readCatalogue.ts';
import { goodShop, printed, shopEdited, shopFolder } from '../faultyShop.ts';

/** The faultless shop with a part `workroom` of these lines. */
const withWorkroom = (...lines: readonly string[]) =>
  shopEdited(
    'shop.yaml',
    'currency: USD',
    ['currency: USD', 'workroom:', ...lines.map((line) => `  ${line}`)].join('\n'),
  );

const told = (...lines: readonly string[]) => printed(withWorkroom(...lines));

describe('the workroom of a shop that says nothing of it', () => {
  const reading = readCatalogue(goodShop());
  if (!reading.ok) throw new Error('The shop is faultless.');
  const { workroom, shop } = reading.catalogue;

  it('holds pairs to the table that was read, and lets no figure from memory decide', () => {
    expect(workroom.tolerance).toMatchObject({ standard: 'ansi-z80.1-2015', memoryChecked: false });
    expect([workroom.billing, workroom.edging, workroom.alignment, workroom.taxId]).toEqual([
      [],
      [],
      [],
      null,
    ]);
  });

  it('is no part of the shop that a shopper is sent', () => {
    expect('workroom' in shop).toBe(false);
  });
});

describe('the part workroom of shop.yaml', () => {
  it('is read as it stands', () => {
    expect(
      told(
        'tolerance: { standard: njac-13-35-5.2, own: { placed: { segment-height: 0.5 } } }',
        'lateAfterDays: { cut: 4 }',
      ),
    ).toBe('no fault');
    expect(loadCatalogue(shopFolder).ok).toBe(true);
  });

  it('names materials that the shop has', () => {
    expect(
      told('edging:', '  - { materials: [standrad], pressure: low, polish: none }'),
    ).toMatchInlineSnapshot(`
      "
      content/shop.yaml:8:21 workroom.edging.0.materials.0: this names something that the shop does not have [unknown-reference]
        8 |     - { materials: [standrad], pressure: low, polish: none }
          |                     ^^^^^^^^
        expected: a material of this shop: standard or tough
        found:    "standrad"
        to do:    Did you mean "standard"?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names coatings that the shop has', () => {
    expect(told('billing:', '  - { code: V1, label: Coat, of: lens, when: { coating: [soft] } }')).toContain(
      '[unknown-reference]',
    );
  });

  it('has the bands of its axis in ascending order', () => {
    expect(
      told(
        'tolerance:',
        '  standard: ansi-z80.1-2015',
        '  own: { axis: [{ upToD: 2, degrees: 3 }, { upToD: 1, degrees: 5 }] }',
      ),
    ).toContain('[not-ascending]');
  });

  it('names a table that there is, and an item that tables know', () => {
    expect(told('tolerance: { standard: ansi }')).toContain('ansi-z80.1-2015, iso-21987-2017');
    expect(told('tolerance: { standard: ansi-z80.1-2015, own: { placed: { segment-hight: 1 } } }')).toContain(
      'segment-hight',
    );
  });

  it('has an alignment list that fits on the sheet', () => {
    const nine = Array.from({ length: 9 }, (_, i) => `line ${i}`).join(', ');
    expect(told(`alignment: [${nine}]`)).toContain('a list of at most 8');
  });
});
