/** What a file in content/frames holds. */
import * as z from 'zod/mini';
import { OUTLINE_FAMILIES } from '../../optics/outlineFamily.ts';
import { BRIDGES, FINISHES, type Mounting, type PartColour, STOCKS } from '../frame.ts';
import { PICTURE_NAME, PICTURE_NAME_SAID } from '../reading/pictureKind.ts';
import {
  civilDay,
  colour,
  fields,
  flag,
  id,
  list,
  type MoneyFields,
  number,
  oneOf,
  orElse,
  orNull,
  text,
  textLike,
} from './fields.ts';

/** `"#5b3a29"` is a solid part. */
function part() {
  return z.union(
    [
      z.pipe(
        colour(),
        z.transform((solid): PartColour => ({ colour: solid, second: null, finish: 'solid' })),
      ),
      fields({
        /** sRGB. */
        colour: colour(),
        /** Second colour of a mottled finish. Default null. */
        second: orNull(colour()),
        /** Default solid. */
        finish: orElse(oneOf(FINISHES), 'solid'),
      }),
    ],
    { error: 'a colour such as "#5b3a29", in quotes, or { colour, second, finish }' },
  );
}

function colourway(money: MoneyFields) {
  return z.pipe(
    fields({
      /** What an order names it by. */
      code: id(),
      name: text(),
      front: part(),
      /** Default: as the front. */
      bridge: z.optional(part()),
      /** Default: as the front. */
      temples: z.optional(part()),
      /** Added to the frame's price. Default "0". */
      priceDifference: orElse(money.difference, 0),
      /** Default in-stock. */
      stock: orElse(oneOf(STOCKS), 'in-stock'),
    }),
    z.transform(({ priceDifference, bridge, temples, ...rest }) => ({
      ...rest,
      bridge: bridge ?? rest.front,
      temples: temples ?? rest.front,
      priceDifferenceMinor: priceDifference,
    })),
  );
}

/** Fitted from a family, or traced in a file of content/outlines. */
function outline() {
  return z.union([fields({ family: oneOf(OUTLINE_FAMILIES) }), fields({ traced: id() })], {
    error: '{ family: ... } or { traced: ... }',
  });
}

function size(money: MoneyFields) {
  return z.pipe(
    fields({
      /** What the temple is stamped with, such as `51-19`, and what tells apart two bridges of it. */
      id: textLike(/^\d\d-\d\d(?:-[a-z0-9]+)*$/, 'a size such as 51-19'),
      /** Width of the box, mm. */
      a: number(25, 80, 'mm'),
      /** Height of the box, mm. */
      b: number(15, 70, 'mm'),
      /** Distance between the boxes, mm. */
      dbl: number(8, 35, 'mm'),
      /** Twice the longest radius from the boxed centre, mm. */
      ed: number(25, 100, 'mm'),
      /** Length of the temple, mm. */
      temple: number(90, 170, 'mm'),
      bridge: oneOf(BRIDGES),
      outline: outline(),
      /** Added to the frame's price. Default "0". */
      priceDifference: orElse(money.difference, 0),
    }),
    z.transform(({ a, b, dbl, ed, temple, priceDifference, ...rest }) => ({
      ...rest,
      aMm: a,
      bMm: b,
      dblMm: dbl,
      edMm: ed,
      templeMm: temple,
      priceDifferenceMinor: priceDifference,
    })),
  );
}

/** `full`, `grooved`, or `{ drilled: [holes] }`. */
function mounting() {
  const hole = fields({
    side: oneOf(['nasal', 'temporal']),
    /** From the boxed side to the middle of the hole, mm. */
    insetMm: number(0.5, 20, 'mm'),
    /** Middle of the hole above the boxed centre, mm. */
    aboveCentreMm: number(-30, 30, 'mm'),
    diameterMm: number(0.5, 4, 'mm'),
  });
  return z.union(
    [
      z.pipe(
        oneOf(['full', 'grooved']),
        z.transform((kind): Mounting => ({ kind })),
      ),
      z.pipe(
        fields({ drilled: list(hole, 2) }),
        z.transform(({ drilled }): Mounting => ({ kind: 'drilled', holes: drilled })),
      ),
    ],
    { error: 'full, grooved or { drilled: [holes] }' },
  );
}

function picture() {
  return fields({
    /** Name of a file in content/frames/pictures. */
    file: textLike(PICTURE_NAME, PICTURE_NAME_SAID),
    /** What is seen, for those who do not see it. */
    alt: text('what the picture shows, in a few words'),
    /** Code of the colourway that is shown. Default null: none in particular. */
    colourway: orNull(id()),
  });
}

/** Schema of a frame; its outlines are still to be fitted or looked up. */
export function frameSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      model: text(),
      /** Id of a collection of shop.yaml. */
      collection: id(),
      /** One sentence for lists. */
      summary: text(),
      price: money.price,
      /** What the front is made of, in the trade's words. */
      material: text(),
      /** Default adult. */
      wearer: orElse(oneOf(['adult', 'child']), 'adult'),
      /** Sold as a sun frame first. Default false. */
      sun: orElse(flag(), false),
      mounting: mounting(),
      /** Thickness of the rim from front to back, mm; 0 where there is no rim. */
      rimDepthMm: number(0, 12, 'mm'),
      /** How much of the lens the rim covers from the bevel apex, mm. */
      rimCoverMm: number(0, 8, 'mm'),
      /** Angle of each rim to the plane of the front, degrees. */
      faceFormDeg: number(0, 40, 'degrees'),
      /** Curve that the rims are bent to, D at the tool index 1.530. */
      frameCurveD: number(0, 12, 'D'),
      /** Without lenses, g. */
      massG: number(1, 100, 'g'),
      /** What is in the rims when the frame arrives. */
      comesFitted: text(),
      inTheBox: list(text()),
      colourways: list(colourway(money), 1),
      sizes: list(size(money), 1),
      /** Sizes and colourways that are not made together. Default none. */
      notOffered: orElse(list(fields({ size: text(), colourway: id(), because: text() })), []),
      /** Photographs; the first stands for the frame. Default none: it is shown by its drawing. */
      pictures: orElse(list(picture()), []),
      /** First day in the shop, for the feed of new frames. Default null: not told. */
      added: orNull(civilDay()),
      /** Day of the last change that a shopper would notice. Default null: not told. */
      changed: orNull(civilDay()),
      /** Ids that this frame had before: their addresses lead to it. Default none. */
      formerIds: orElse(list(id()), []),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
