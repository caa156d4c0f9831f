/** What a file in content/pages holds besides its text. */

import { about } from './about.ts';
import { fields, orNull, text, whole } from './fields.ts';

/** Schema of a prose page. */
export function pageSchema() {
  return fields({
    title: about('Heading, and name in the menu.', text(), 'Returns and repairs'),
    description: about('One sentence for search results.', text()),
    menu: about('Place in the menu, from 1. Default null: not in the menu.', orNull(whole(1, 100))),
  });
}
