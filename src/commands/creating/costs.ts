/** `npm run new -- costs`: the file of costs beside the content folder, with everything that the shop has. */
import { basename, dirname, join, resolve } from 'node:path';
import { fileSchema } from '../../catalogue/schema/editorSchemas.ts';
import { costsSchemaLine } from '../schemaLine.ts';
import { commentedYaml } from './commentedFile.ts';
import { type Answers, type Known, orNone, priced, type Recipe } from './recipe.ts';

const pathIn = ({ folder }: Known) => join(dirname(folder), 'costs.yaml');

function costsOf({ work, parcel }: Answers, { content, currency }: Known) {
  const nothing = priced('0', currency);
  const each = (all: readonly { readonly id: string }[]) =>
    Object.fromEntries(all.map(({ id }) => [id, nothing]));
  return {
    frames: each(content.frames),
    designs: each(content.designs),
    materials: each(content.materials),
    tints: each(content.tints),
    coatings: each(content.coatings),
    work: priced(work, currency),
    parcel: orNone(parcel) === null ? null : priced(parcel, currency),
  };
}

/** Costs that all are nothing yet. */
export const costsRecipe: Recipe = {
  name: 'costs',
  says: 'the list of what things cost you, which is never published',
  questions: [
    { name: 'work', asks: 'Bench time and small parts, a pair', field: ['work'], suggest: () => '0' },
    {
      name: 'parcel',
      asks: 'Sending a parcel; nothing leaves parcels out of the reckoning',
      field: ['parcel'],
      suggest: () => '',
    },
  ],
  value: costsOf,
  schema: (currency) => fileSchema('costs', currency),
  changes: (answers, known) => {
    const line = costsSchemaLine(basename(resolve(known.folder)));
    const text = commentedYaml('costs', line, known.currency, costsOf(answers, known));
    return [{ path: pathIn(known), text, fresh: true }];
  },
  next: () => [
    'Write what each costs you instead of 0; what costs nothing in it is reckoned as costing nothing.',
    'npm run prices then tells which pairs sell under cost.',
  ],
};
