/** What a file in content/lenses/materials holds. */
import * as z from 'zod/mini';
import { MOUNTINGS } from '../frame.ts';
import { about } from './about.ts';
import {
  fields,
  flag,
  id,
  idsOrAll,
  list,
  type MoneyFields,
  number,
  oneOf,
  orElse,
  orNull,
  range,
} from './fields.ts';
import { optionFields, surcharge } from './option.ts';

/** A true surface power, D, or with the conic constant of the front. */
function baseCurve() {
  const power = number(-2, 20, 'D');
  return z.union(
    [
      z.pipe(
        power,
        z.transform((powerD) => ({ powerD, conic: null })),
      ),
      fields({
        powerD: about("True surface power for this material's ne, D.", power),
        conic: about(
          'Conic constant of the front. Default null: not known, taken as spherical and said so.',
          orNull(number(-20, 5)),
        ),
      }),
    ],
    { error: 'a base curve in D, or { powerD, conic }' },
  );
}

function stockBlanks(money: MoneyFields) {
  return z.pipe(
    fields({
      id: about('What an order names these lenses by.', id(), 'stock-70'),
      diameterMm: about('Of the uncut lens, mm.', number(40, 100, 'mm'), 70),
      sphereD: about('Spheres that are in stock, D.', range(-30, 30, 'D')),
      cylinderD: about('Largest minus cylinder in absolute value, D.', number(0, 8, 'D')),
      stepD: about('Step of the grid, D. Default 0.25.', orElse(number(0.01, 1, 'D'), 0.25)),
      forms: about(
        'By spherical equivalent, ascending: base curve and centre thickness up to and with `toD`.',
        list(
          fields({
            toD: about('Largest spherical equivalent of this form, D.', number(-30, 30, 'D'), -2),
            baseCurveD: about('Power of the front, D.', number(-2, 20, 'D'), 4),
            centreThicknessMm: about('At the centre, mm.', number(0.5, 20, 'mm'), 1.5),
          }),
          1,
        ),
      ),
      coatings: about('Coatings that these lenses come with; no other can be had on them.', idsOrAll()),
      tints: about('Tints that can be had on them.', idsOrAll()),
      price: about('Of a pair: replaces the price of design and material together.', money.price),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}

function surfacedBlanks() {
  return fields({
    diametersMm: about(
      'Diameters that can be ordered, mm, ascending.',
      list(number(40, 100, 'mm'), 1),
      [65, 70, 75],
    ),
    referenceInMm: about(
      "Where the reference point lies from the blank's middle, towards the nose, mm. Default 0.",
      orElse(number(-20, 20, 'mm'), 0),
    ),
    referenceUpMm: about('And up, mm. Default 0.', orElse(number(-20, 20, 'mm'), 0)),
    mostMoveMm: about(
      'How far the optical centre of single vision may be moved from the middle of the blank, mm. Default 0.',
      orElse(number(0, 20, 'mm'), 0),
    ),
    baseCurves: about('Base curves, ascending.', list(baseCurve(), 1)),
  });
}

function leastThickness() {
  const mm = number(0.1, 10, 'mm');
  return fields({
    centre: about('At the centre, mm.', mm),
    edge: about('At the edge of a full rim lens, mm.', mm),
    groove: about('At the groove, mm. Default null: not grooved.', orNull(mm)),
    hole: about('At a hole, mm. Default null: not drilled.', orNull(mm)),
  });
}

/** Schema of a material; its lists may still say `all`. */
export function materialSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      nd: about('Refractive index at 587.56 nm.', number(1.4, 2), 1.59),
      ne: about('Refractive index at 546.07 nm.', number(1.4, 2)),
      abbe: about('Abbe number.', number(20, 80), 32),
      densityGPerCm3: about('g/cm³.', number(0.8, 5, 'g/cm³'), 1.32),
      uvCutOffNm: about('Longest wavelength that is stopped, nm.', number(280, 450, 'nm')),
      leastMm: about('Least thickness that the workroom makes, mm.', leastThickness()),
      mountings: about('Mountings that the workroom makes in it.', list(oneOf(MOUNTINGS), 1)),
      impactResistant: about(
        'Impact resistant enough for children and one-eyed wearers in this shop.',
        flag(),
      ),
      alwaysHardCoated: about('Always leaves the maker with a hard coat.', flag()),
      powerD: about('Strongest meridian that it is made in, D.', range(-40, 40, 'D')),
      stock: about('Ready-made lenses. Default none.', orElse(list(stockBlanks(money)), [])),
      surfaced: about('Blanks whose back is made to order. Default null: none.', orNull(surfacedBlanks())),
      surcharges: about('Default none.', orElse(list(surcharge(money)), [])),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
