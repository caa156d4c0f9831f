/** What shop.yaml says below `prices`: read by `npm run prices` alone, and never published. */
import { USES } from '../design.ts';
import { about } from './about.ts';
import { fields, id, list, type MoneyFields, number, oneOf, orElse, orNull, text } from './fields.ts';

function typical() {
  return fields({
    name: about('What the report calls this pair.', text(), 'Everyday distance pair'),
    frame: about('Id of the frame.', id(), 'dunlin'),
    size: about('Size of the frame.', text('a size such as 51-19'), '51-19'),
    colourway: about('Code of the colourway.', id(), 'night-blue'),
    use: about('What the lenses are for. Default distance.', orElse(oneOf(USES), 'distance')),
    design: about('Id of the design.', id(), 'single-vision'),
    material: about('Id of the material.', id(), 'standard-plastic'),
    tint: about('Id of the tint. Default null: none.', orNull(id())),
    coating: about('Id of the coating. Default null: none.', orNull(id())),
    sphere: about('Of both eyes, D. Default 0.', orElse(number(-30, 30, 'D'), 0), -2.25),
    cylinder: about('Of both eyes, D, either sign. Default 0.', orElse(number(-12, 12, 'D'), 0), -0.5),
    add: about('Of both eyes, D. Default 0: none.', orElse(number(0, 4, 'D'), 0), 1.5),
  });
}

/** Schema of `prices`; all of it may be left out. */
export function priceHabitsSchema(money: MoneyFields) {
  return orElse(
    fields({
      endings: about(
        'How prices end: "9.00" means 149.00, 159.00 and so on. Default none: as they like.',
        orElse(list(money.price), []),
        ['9.00'],
      ),
      typical: about(
        'Pairs whose whole price is watched. Default none: the cheapest for each use.',
        orElse(list(typical()), []),
      ),
    }),
    { endings: [], typical: [] },
  );
}
