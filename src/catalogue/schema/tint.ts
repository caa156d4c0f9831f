/** What a file in content/lenses/tints holds. */
import * as z from 'zod/mini';
import { TINT_KINDS } from '../tint.ts';
import { about } from './about.ts';
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
    name: about('Shown as it stands, such as `clear at 23 °C`.', text()),
    transmittance: about('Luminous transmittance of the tint by itself, above 0 to 1.', number(0.001, 1)),
    colour: about('sRGB for drawings.', colour()),
    temperatureC: about(
      'Lens temperature of a photochromic state, °C. Default null: it does not matter.',
      orNull(number(-30, 60, '°C')),
    ),
  });
}

function spectrum() {
  return fields({
    fromNm: about('Wavelength of the first value, nm.', number(280, 800, 'nm')),
    stepNm: about('Step to the next, nm.', number(1, 20, 'nm')),
    transmittance: about('Spectral transmittance of the darkest state, 0 to 1.', list(number(0, 1), 2)),
  });
}

/** Schema of a tint; its lists may still say `all`. */
export function tintSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      kind: about('How it colours the lens.', oneOf(TINT_KINDS)),
      polarised: about('Default: true for the kind polarised, else false.', z.optional(flag())),
      mirrored: about('Default: true for the kind mirror, else false.', z.optional(flag())),
      states: about(
        'One for an even tint; top and foot of a gradient; each declared state of a photochromic one.',
        list(state(), 1),
      ),
      spectrum: about('Default null: spectral requirements are then "not shown".', orNull(spectrum())),
      materials: about('Materials that it is made in.', idsOrAll()),
      designs: about('Designs that it is made in.', idsOrAll()),
    }),
    z.transform(({ price, polarised, mirrored, ...rest }) => ({
      ...rest,
      priceMinor: price,
      polarised: polarised ?? rest.kind === 'polarised',
      mirrored: mirrored ?? rest.kind === 'mirror',
    })),
  );
}
