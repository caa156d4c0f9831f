/** What a file in content/outlines holds: a traced lens shape. */

import * as z from 'zod/mini';
import { about } from './about.ts';
import { fields, list, number } from './fields.ts';

const RADII = 'a list of 36 to 1440 radii in mm';

/** Schema of a traced outline. */
export function outlineSchema() {
  return fields({
    radiiMm: about(
      'Radii of the right lens from the front, mm, at equal angles, counter-clockwise from +x (the nose), to the bevel apex or groove bottom. Their centre may be anywhere inside.',
      list(number(5, 60, 'mm')).check(z.minLength(36, { error: RADII }), z.maxLength(1440, { error: RADII })),
    ),
  });
}
