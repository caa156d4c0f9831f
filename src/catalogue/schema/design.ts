/** What a file in content/lenses/designs holds. */
import * as z from 'zod/mini';
import { DESIGN_KINDS, USES } from '../design.ts';
import { about } from './about.ts';
import {
  fields,
  idsOrAll,
  list,
  type MoneyFields,
  number,
  oneOf,
  orElse,
  orNull,
  range,
  text,
} from './fields.ts';
import { optionFields, surcharge } from './option.ts';

function corridor() {
  return fields({
    lengthMm: about(
      'Fitting cross to where the add (or its declared share) is reached, mm.',
      number(4, 30, 'mm'),
    ),
    definition: about('How the maker defines that length.', text()),
    leastFittingHeightMm: about(
      'Declared least fitting height, mm. Default null: corridor and 4 mm.',
      orNull(number(5, 40, 'mm')),
    ),
    leastAboveCrossMm: about('Least depth of lens above the fitting cross, mm.', number(0, 30, 'mm')),
    referenceBelowCrossMm: about('Prism reference point below the fitting cross, mm.', number(0, 20, 'mm')),
    nearInsetMm: about(
      'Horizontal inset of the near zone, mm. Default null: from the geometry of convergence.',
      orNull(number(0, 6, 'mm')),
    ),
    thinningPrismShare: about(
      'Share of the add as thinning prism, base down in both eyes. Default 0.',
      orElse(number(0, 1), 0),
    ),
    addShareAtCross: about('Share of the add at the fitting cross. Default 0.', orElse(number(0, 1), 0)),
  });
}

function segment() {
  return fields({
    widthMm: about('Of the segment, mm.', number(10, 80, 'mm'), 28),
    depthMm: about('Top to bottom of the whole segment, mm.', number(5, 50, 'mm')),
    centreBelowTopMm: about("Segment top to the segment's own optical centre, mm.", number(0, 30, 'mm')),
    leastHeightMm: about('Least segment height that is fitted, mm.', number(5, 40, 'mm')),
    blankDropMm: about("Segment top below the blank's reference point, mm.", number(-10, 20, 'mm')),
    blankInsetMm: about(
      "Segment's middle towards the nose from the blank's reference point, mm.",
      number(-10, 10, 'mm'),
    ),
  });
}

/** Schema of a design; its list of materials may still say `all`. */
export function designSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      kind: about('What the lens is by its construction.', oneOf(DESIGN_KINDS)),
      uses: about('What it may be used for.', list(oneOf(USES), 1), ['all'], ['distance', 'near']),
      materials: about('Materials that it is made in.', idsOrAll()),
      sphereD: about('Spheres, D.', range(-40, 40, 'D')),
      cylinderD: about('Largest cylinder in absolute value, D.', number(0, 10, 'D')),
      addD: about('Adds, D. Default null: it has none.', orNull(range(0, 5, 'D'))),
      prism: about('Largest ordered prism of an eye, prism dioptres.', number(0, 20, 'prism dioptres')),
      faceFormDeg: about('Largest face form, degrees.', number(0, 40, 'degrees')),
      corridor: about('Of a progressive or office design. Default null.', orNull(corridor())),
      segment: about('Of a bifocal. Default null.', orNull(segment())),
      surcharges: about('Default none.', orElse(list(surcharge(money)), [])),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
