/** `npm run new -- collection`: an entry at the end of the collections of shop.yaml. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stringify } from 'yaml';
import { slug } from '../../catalogue/reading/folders.ts';
import { collection } from '../../catalogue/schema/shop.ts';
import { withItem } from '../editFields.ts';
import { collectionIds } from './frame.ts';
import type { Answers, Recipe } from './recipe.ts';

const entryOf = ({ id, name, summary }: Answers) => ({ id, name, summary });

/** A collection without frames. */
export const collectionRecipe: Recipe = {
  name: 'collection',
  says: 'a collection of frames',
  list: 'collections',
  questions: [
    { name: 'name', asks: 'Name that the shopper reads', field: ['name'] },
    {
      name: 'id',
      asks: 'Its id, by which frames name it',
      field: ['id'],
      suggest: ({ name }) => slug(name ?? '') || null,
      refuses: ({ id = '' }, known) =>
        collectionIds(known).includes(id) ? `There is a collection "${id}" already.` : null,
    },
    { name: 'summary', asks: 'One sentence for lists', field: ['summary'] },
  ],
  value: entryOf,
  schema: () => collection(),
  changes: (answers, known) => {
    const path = join(known.folder, 'shop.yaml');
    const item = stringify(entryOf(answers), { lineWidth: 0 });
    const text = withItem(readFileSync(path, 'utf8'), ['collections'], item);
    if (text === null)
      return new Error(`${path}: its collections cannot be added to without touching the rest.`);
    return [{ path, text, fresh: false }];
  },
  next: ({ id }) => [
    `Put frames into it: collection: ${id} in their files, or npm run new -- frame.`,
    `npm run dev shows it at /collections/${id}/`,
  ],
};
