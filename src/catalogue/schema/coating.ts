/** What a file in content/lenses/coatings holds. */
import * as z from 'zod/mini';
import { COATED_FACES } from '../coating.ts';
import { about } from './about.ts';
import { fields, flag, idsOrAll, type MoneyFields, number, oneOf, orNull } from './fields.ts';
import { optionFields } from './option.ts';

/** Schema of a coating; its lists may still say `all`. */
export function coatingSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      faces: about('Which faces carry the reflection-reducing stack.', oneOf(COATED_FACES)),
      residualReflectance: about(
        'Luminous reflectance left on a coated face, 0 to 1. Default null, where no face is coated.',
        orNull(number(0, 1)),
      ),
      hard: about('Whether it hardens the surface.', flag()),
      materials: about('Materials that it is put on.', idsOrAll()),
      tints: about('Tints that it goes with.', idsOrAll()),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
