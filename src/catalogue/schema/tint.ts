/** What a file in content/lenses/tints holds. */
import * as z from 'zod/mini';
import { TINT_KINDS } from '../tint.ts';
import {
  colour,
  fields,
  flag,
  idsOrAll,
  list,
  type MoneyFields,
  number,
  oneOf,
  orNull,
  text,
} from './fields.ts';
import { optionFields } from './option.ts';

function state() {
  return fields({
    /** Shown as it stands, such as `clear at 23 °C`. */
    name: text(),
    /** Luminous transmittance of the tint by itself, above 0 to 1. */
    transmittance: number(0.001, 1),
    /** sRGB for drawings. */
    colour: colour(),
    /** Lens temperature of a photochromic state, °C. Default null: it does not matter. */
    temperatureC: orNull(number(-30, 60, '°C')),
  });
}

function spectrum() {
  return fields({
    /** Wavelength of the first value, nm. */
    fromNm: number(280, 800, 'nm'),
    /** Step to the next, nm. */
    stepNm: number(1, 20, 'nm'),
    /** Spectral transmittance of the darkest state, 0 to 1. */
    transmittance: list(number(0, 1), 2),
  });
}

/** Schema of a tint; its lists may still say `all`. */
export function tintSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      kind: oneOf(TINT_KINDS),
      /** Default: true for the kind polarised, else false. */
      polarised: z.optional(flag()),
      /** Default: true for the kind mirror, else false. */
      mirrored: z.optional(flag()),
      /** One for an even tint; top and foot of a gradient; each declared state of a photochromic one. */
      states: list(state(), 1),
      /** Default null: spectral requirements are then "not shown". */
      spectrum: orNull(spectrum()),
      /** Materials that it is made in. */
      materials: idsOrAll(),
      /** Designs that it is made in. */
      designs: idsOrAll(),
    }),
    z.transform(({ price, polarised, mirrored, ...rest }) => ({
      ...rest,
      priceMinor: price,
      polarised: polarised ?? rest.kind === 'polarised',
      mirrored: mirrored ?? rest.kind === 'mirror',
    })),
  );
}
