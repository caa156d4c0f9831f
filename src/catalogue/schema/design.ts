/** What a file in content/lenses/designs holds. */
import * as z from 'zod/mini';
import { DESIGN_KINDS, USES } from '../design.ts';
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
    /** Fitting cross to where the add (or its declared share) is reached, mm. */
    lengthMm: number(4, 30, 'mm'),
    /** How the maker defines that length. */
    definition: text(),
    /** Declared least fitting height, mm. Default null: corridor and 4 mm. */
    leastFittingHeightMm: orNull(number(5, 40, 'mm')),
    /** Least depth of lens above the fitting cross, mm. */
    leastAboveCrossMm: number(0, 30, 'mm'),
    /** Prism reference point below the fitting cross, mm. */
    referenceBelowCrossMm: number(0, 20, 'mm'),
    /** Horizontal inset of the near zone, mm. Default null: from the geometry of convergence. */
    nearInsetMm: orNull(number(0, 6, 'mm')),
    /** Share of the add as thinning prism, base down in both eyes. Default 0. */
    thinningPrismShare: orElse(number(0, 1), 0),
    /** Share of the add at the fitting cross. Default 0. */
    addShareAtCross: orElse(number(0, 1), 0),
  });
}

function segment() {
  return fields({
    widthMm: number(10, 80, 'mm'),
    /** Top to bottom of the whole segment, mm. */
    depthMm: number(5, 50, 'mm'),
    /** Segment top to the segment's own optical centre, mm. */
    centreBelowTopMm: number(0, 30, 'mm'),
    /** Least segment height that is fitted, mm. */
    leastHeightMm: number(5, 40, 'mm'),
    /** Segment top below the blank's reference point, mm. */
    blankDropMm: number(-10, 20, 'mm'),
    /** Segment's middle towards the nose from the blank's reference point, mm. */
    blankInsetMm: number(-10, 10, 'mm'),
  });
}

/** Schema of a design; its list of materials may still say `all`. */
export function designSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      ...optionFields(money),
      kind: oneOf(DESIGN_KINDS),
      /** What it may be used for. */
      uses: list(oneOf(USES), 1),
      /** Materials that it is made in. */
      materials: idsOrAll(),
      /** Spheres, D. */
      sphereD: range(-40, 40, 'D'),
      /** Largest cylinder in absolute value, D. */
      cylinderD: number(0, 10, 'D'),
      /** Adds, D. Default null: it has none. */
      addD: orNull(range(0, 5, 'D')),
      /** Largest ordered prism of an eye, prism dioptres. */
      prism: number(0, 20, 'prism dioptres'),
      /** Largest face form, degrees. */
      faceFormDeg: number(0, 40, 'degrees'),
      /** Of a progressive or office design. Default null. */
      corridor: orNull(corridor()),
      /** Of a bifocal. Default null. */
      segment: orNull(segment()),
      /** Default none. */
      surcharges: orElse(list(surcharge(money)), []),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
