/** What an entry of `colourways` in a frame's file holds. */
import * as z from 'zod/mini';
import { FINISHES, type PartColour, STOCKS } from '../frame.ts';
import { about } from './about.ts';
import { colour, fields, id, type MoneyFields, oneOf, orElse, orNull, text } from './fields.ts';

/** `"#5b3a29"` is a solid part. */
function part() {
  return z.union(
    [
      z.pipe(
        colour(),
        z.transform((solid): PartColour => ({ colour: solid, second: null, finish: 'solid' })),
      ),
      fields({
        colour: about('First colour.', colour()),
        second: about('Second colour of a mottled finish. Default null.', orNull(colour())),
        finish: about('Look of the surface. Default solid.', orElse(oneOf(FINISHES), 'solid')),
      }),
    ],
    { error: 'a colour such as "#5b3a29", in quotes, or { colour, second, finish }' },
  );
}

/** Schema of one colourway: its parts follow the front where they are left out. */
export function colourway(money: MoneyFields) {
  return z.pipe(
    fields({
      code: about('What an order names it by.', id(), 'night-blue'),
      name: about('Name that the shopper reads.', text(), 'Night blue'),
      front: about('Colour of the front: one colour, or colours and finish.', part(), '#25324a', {
        colour: '#5b3a29',
        second: '#2a1a12',
        finish: 'mottled',
      }),
      bridge: about('Colour of the bridge. Default: as the front.', z.optional(part())),
      temples: about('Colour of the temples. Default: as the front.', z.optional(part())),
      priceDifference: about("Added to the frame's price. Default: nothing.", orElse(money.difference, 0)),
      stock: about('Whether it can be had. Default in-stock.', orElse(oneOf(STOCKS), 'in-stock')),
    }),
    z.transform(({ priceDifference, bridge, temples, ...rest }) => ({
      ...rest,
      bridge: bridge ?? rest.front,
      temples: temples ?? rest.front,
      priceDifferenceMinor: priceDifference,
    })),
  );
}
