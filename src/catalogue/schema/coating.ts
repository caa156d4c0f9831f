/** What a file in content/lenses/coatings holds. */
import * as z from 'zod/mini';
import { COATED_FACES } from '../coating.ts';
import { fields, flag, idsOrAll, type MoneyFields, number, oneOf, orNull } from './fields.ts';
import { optionFields } from './option.ts';

/** Schema of a coating; its lists may still say `all`. */
export function coatingSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      /** Which faces carry the reflection-reducing stack. */
      faces: oneOf(COATED_FACES),
      /** Luminous reflectance left on a coated face, 0 to 1. Default null, where no face is coated. */
      residualReflectance: orNull(number(0, 1)),
      /** Whether it hardens the surface. */
      hard: flag(),
      /** Materials that it is put on. */
      materials: idsOrAll(),
      /** Tints that it goes with. */
      tints: idsOrAll(),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
