/** What a file in content/pages holds besides its text. */
import { fields, orNull, text, whole } from './fields.ts';

/** Schema of a prose page. */
export function pageSchema() {
  return fields({
    title: text(),
    /** One sentence for search results. */
    description: text(),
    /** Place in the menu, from 1. Default null: not in the menu. */
    menu: orNull(whole(1, 100)),
  });
}
