/** What a file in content/lenses/materials holds. */
import * as z from 'zod/mini';
import { MOUNTINGS } from '../frame.ts';
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
        /** True surface power for this material's ne, D. */
        powerD: power,
        /** Conic constant of the front. Default null: not known, taken as spherical and said so. */
        conic: orNull(number(-20, 5)),
      }),
    ],
    { error: 'a base curve in D, or { powerD, conic }' },
  );
}

function stockBlanks(money: MoneyFields) {
  return z.pipe(
    fields({
      id: id(),
      diameterMm: number(40, 100, 'mm'),
      /** Spheres that are in stock, D. */
      sphereD: range(-30, 30, 'D'),
      /** Largest minus cylinder in absolute value, D. */
      cylinderD: number(0, 8, 'D'),
      /** Step of the grid, D. Default 0.25. */
      stepD: orElse(number(0.01, 1, 'D'), 0.25),
      /** By spherical equivalent, ascending: base curve and centre thickness up to and with `toD`. */
      forms: list(
        fields({
          toD: number(-30, 30, 'D'),
          baseCurveD: number(-2, 20, 'D'),
          centreThicknessMm: number(0.5, 20, 'mm'),
        }),
        1,
      ),
      /** Coatings that these lenses come with; no other can be had on them. */
      coatings: idsOrAll(),
      /** Tints that can be had on them. */
      tints: idsOrAll(),
      /** Of a pair: replaces the price of design and material together. */
      price: money.price,
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}

function surfacedBlanks() {
  return fields({
    diametersMm: list(number(40, 100, 'mm'), 1),
    /** Where the reference point lies from the blank's middle, towards the nose, mm. Default 0. */
    referenceInMm: orElse(number(-20, 20, 'mm'), 0),
    /** And up, mm. Default 0. */
    referenceUpMm: orElse(number(-20, 20, 'mm'), 0),
    /** How far the optical centre of single vision may be moved from the middle of the blank, mm. Default 0. */
    mostMoveMm: orElse(number(0, 20, 'mm'), 0),
    /** Base curves, ascending. */
    baseCurves: list(baseCurve(), 1),
  });
}

function leastThickness() {
  const mm = number(0.1, 10, 'mm');
  return fields({
    /** At the centre, mm. */
    centre: mm,
    /** At the edge of a full rim lens, mm. */
    edge: mm,
    /** At the groove, mm. Default null: not grooved. */
    groove: orNull(mm),
    /** At a hole, mm. Default null: not drilled. */
    hole: orNull(mm),
  });
}

/** Schema of a material; its lists may still say `all`. */
export function materialSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      /** Refractive index at 587.56 nm. */
      nd: number(1.4, 2),
      /** Refractive index at 546.07 nm. */
      ne: number(1.4, 2),
      /** Abbe number. */
      abbe: number(20, 80),
      densityGPerCm3: number(0.8, 5, 'g/cm³'),
      /** Longest wavelength that is stopped, nm. */
      uvCutOffNm: number(280, 450, 'nm'),
      leastMm: leastThickness(),
      /** Mountings that the workroom makes in it. */
      mountings: list(oneOf(MOUNTINGS), 1),
      /** Impact resistant enough for children and one-eyed wearers in this shop. */
      impactResistant: flag(),
      /** Always leaves the maker with a hard coat. */
      alwaysHardCoated: flag(),
      /** Strongest meridian that it is made in, D. */
      powerD: range(-40, 40, 'D'),
      /** Ready-made lenses. Default none. */
      stock: orElse(list(stockBlanks(money)), []),
      /** Blanks whose back is made to order. Default null: none. */
      surfaced: orNull(surfacedBlanks()),
      /** Default none. */
      surcharges: orElse(list(surcharge(money)), []),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
