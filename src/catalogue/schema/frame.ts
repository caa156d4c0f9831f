/** What a file in content/frames holds. */
import * as z from 'zod/mini';
import { OUTLINE_FAMILIES } from '../../optics/outlineFamily.ts';
import { BRIDGES, type Mounting } from '../frame.ts';
import { PICTURE_NAME, PICTURE_NAME_SAID } from '../reading/pictureKind.ts';
import { about } from './about.ts';
import { colourway } from './colourway.ts';
import {
  civilDay,
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

/** Fitted from a family, or traced in a file of content/outlines. */
function outline() {
  return z.union(
    [
      fields({ family: about('Family that the shape belongs to: an estimate.', oneOf(OUTLINE_FAMILIES)) }),
      fields({ traced: about('Name of a file in content/outlines without its ending.', id(), 'stint-49') }),
    ],
    {
      error: '{ family: ... } or { traced: ... }',
    },
  );
}

/** Schema of one size; its outline is still to be fitted or looked up. */
export function size(money: MoneyFields) {
  return z.pipe(
    fields({
      id: about(
        'What the temple is stamped with, such as `51-19`, and what tells apart two bridges of it.',
        textLike(/^\d\d-\d\d(?:-[a-z0-9]+)*$/, 'a size such as 51-19'),
      ),
      a: about('Width of the box, mm.', number(25, 80, 'mm'), 51),
      b: about('Height of the box, mm.', number(15, 70, 'mm'), 36.5),
      dbl: about('Distance between the boxes, mm.', number(8, 35, 'mm'), 19),
      ed: about('Twice the longest radius from the boxed centre, mm.', number(25, 100, 'mm'), 53),
      temple: about('Length of the temple, mm.', number(90, 170, 'mm'), 145),
      bridge: about('How it sits on the nose.', oneOf(BRIDGES)),
      outline: about(
        'Shape of the lens: drawn from a, b, ed and a family, or traced in a file of content/outlines.',
        outline(),
        { family: 'panto' },
        { traced: 'stint-49' },
      ),
      priceDifference: about("Added to the frame's price. Default: nothing.", orElse(money.difference, 0)),
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
    side: about('Which side of the lens.', oneOf(['nasal', 'temporal'])),
    insetMm: about('From the boxed side to the middle of the hole, mm.', number(0.5, 20, 'mm')),
    aboveCentreMm: about('Middle of the hole above the boxed centre, mm.', number(-30, 30, 'mm')),
    diameterMm: about('Of the hole, mm.', number(0.5, 4, 'mm'), 1.4),
  });
  return z.union(
    [
      z.pipe(
        oneOf(['full', 'grooved']),
        z.transform((kind): Mounting => ({ kind })),
      ),
      z.pipe(
        fields({ drilled: about('Holes of the right lens.', list(hole, 2)) }),
        z.transform(({ drilled }): Mounting => ({ kind: 'drilled', holes: drilled })),
      ),
    ],
    { error: 'full, grooved or { drilled: [holes] }' },
  );
}

function picture() {
  return fields({
    file: about('Name of a file in content/frames/pictures.', textLike(PICTURE_NAME, PICTURE_NAME_SAID)),
    alt: about('What is seen, for those who do not see it.', text('what the picture shows, in a few words')),
    colourway: about('Code of the colourway that is shown. Default null: none in particular.', orNull(id())),
  });
}

/** Schema of a frame; its outlines are still to be fitted or looked up. */
export function frameSchema(money: MoneyFields) {
  return z.pipe(
    fields({
      model: about('Name that the shopper reads.', text(), 'Dunlin'),
      collection: about('Id of a collection of shop.yaml.', id(), 'saltmarsh'),
      summary: about('One sentence for lists.', text(), 'A small oval in steel, plain and light.'),
      price: about('With what is in the box, without lenses.', money.price),
      material: about(
        "What the front is made of, in the trade's words.",
        text(),
        'Acetate',
        'Stainless steel',
      ),
      wearer: about('Whose faces it is cut for. Default adult.', orElse(oneOf(['adult', 'child']), 'adult')),
      sun: about('Sold as a sun frame first. Default false.', orElse(flag(), false)),
      mounting: about(
        'How the lenses are held: full rim, a groove with a thread, or holes.',
        mounting(),
        'full',
        'grooved',
      ),
      rimDepthMm: about(
        'Thickness of the rim from front to back, mm; 0 where there is no rim.',
        number(0, 12, 'mm'),
      ),
      rimCoverMm: about('How much of the lens the rim covers from the bevel apex, mm.', number(0, 8, 'mm')),
      faceFormDeg: about('Angle of each rim to the plane of the front, degrees.', number(0, 40, 'degrees')),
      frameCurveD: about('Curve that the rims are bent to, D at the tool index 1.530.', number(0, 12, 'D')),
      massG: about('Without lenses, g.', number(1, 100, 'g')),
      comesFitted: about('What is in the rims when the frame arrives.', text(), 'Clear demonstration lenses'),
      inTheBox: about('What the shopper gets besides the frame.', list(text()), ['Hard case', 'Cloth']),
      colourways: about('Colours that it is sold in.', list(colourway(money), 1)),
      sizes: about('Sizes, measured by the boxing system.', list(size(money), 1)),
      notOffered: about(
        'Sizes and colourways that are not made together. Default none.',
        orElse(
          list(
            fields({
              size: about('Id of a size of this frame.', text(), '51-19'),
              colourway: about('Code of a colourway of this frame.', id(), 'night-blue'),
              because: about('Sentence that the shopper reads.', text()),
            }),
          ),
          [],
        ),
      ),
      pictures: about(
        'Photographs; the first stands for the frame, in lists cut to a strip round its middle. Default none: it is shown by its drawing.',
        orElse(list(picture()), []),
      ),
      added: about(
        'First day in the shop, for the feed of new frames. Default null: not told.',
        orNull(civilDay()),
      ),
      changed: about(
        'Day of the last change that a shopper would notice. Default null: not told.',
        orNull(civilDay()),
      ),
      formerIds: about(
        'Ids that this frame had before: their addresses lead to it. Default none.',
        orElse(list(id()), []),
      ),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
