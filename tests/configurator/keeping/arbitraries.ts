/** Entries and packages as visitors and strangers could make them. */
import fc from 'fast-check';
import { USES } from '../../../src/catalogue/design.ts';
import { type Entries, FIELDS } from '../../../src/configurator/fields.ts';
import { shop } from '../shop.ts';

/** What is typed into a field: any signs that are seen, without outer spaces. */
const typed = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
  .map((text) => text.replace(/[\p{Cc}\p{Cf}\p{Co}\p{Cs}]/gu, '').trim())
  .filter((text) => text !== '');

/** Any fields with any texts. */
export const anyEntries: fc.Arbitrary<Entries> = fc
  .array(fc.tuple(fc.constantFrom(...FIELDS), typed), { maxLength: 25 })
  .map((pairs) => Object.fromEntries(pairs));

const idOf = (all: readonly { readonly id: string }[]) => fc.constantFrom(...all.map(({ id }) => id));

/** Lens choices of the shop, some of them left as the worksheet has them. */
export const anyPackage: fc.Arbitrary<Entries> = fc.record(
  {
    use: fc.constantFrom(...USES),
    design: idOf(shop.designs),
    material: idOf(shop.materials),
    tint: idOf(shop.tints),
    coating: idOf(shop.coatings),
    blank: fc.constantFrom('auto', 'stock', 'surfaced'),
    wearer: fc.constantFrom('adult', 'child', 'one-eyed'),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<Entries>;
