/** `npm run new -- size`: an entry at the end of the sizes of a frame that is there. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stringify } from 'yaml';
import { sound } from '../../catalogue/content.ts';
import { BRIDGES } from '../../catalogue/frame.ts';
import { size } from '../../catalogue/schema/frame.ts';
import { moneyIn } from '../../catalogue/schema/money.ts';
import { OUTLINE_FAMILIES } from '../../optics/outlineFamily.ts';
import { withItem } from '../editFields.ts';
import { boxFields, refuseEd, sizeName, suggestEd } from './boxed.ts';
import { type Answers, type Known, priced, type Recipe } from './recipe.ts';

function entryOf(answers: Answers, { currency }: Known) {
  return {
    id: answers['id'],
    ...boxFields(answers),
    priceDifference: priced(answers['difference'], currency),
  };
}

/** An id that the frame has already. */
function taken({ frame, id }: Answers, { content }: Known): string | null {
  const found = sound(content.frames).find((one) => one.id === frame);
  const has = found?.value.sizes.some((one) => one.id === id);
  return has ? `The frame has a size "${id}" already. Put something behind it, such as ${id}-wide.` : null;
}

/** A size of a frame, drawn from a family until it is traced. */
export const sizeRecipe: Recipe = {
  name: 'size',
  says: 'a size of a frame that is there',
  list: 'sizes',
  questions: [
    { name: 'frame', asks: 'Frame', choices: ({ content }) => content.frames.map(({ id }) => id) },
    { name: 'a', asks: 'A, width of the lens box in mm', field: ['a'] },
    { name: 'b', asks: 'B, height of the lens box in mm', field: ['b'] },
    { name: 'dbl', asks: 'DBL, distance between the boxes in mm', field: ['dbl'] },
    { name: 'id', asks: 'Its id, as on the temple', field: ['id'], suggest: sizeName, refuses: taken },
    { name: 'family', asks: 'Family of the shape', choices: () => OUTLINE_FAMILIES, suggest: () => 'panto' },
    {
      name: 'ed',
      asks: 'ED, twice the longest radius from the middle of the box in mm',
      field: ['ed'],
      suggest: suggestEd,
      refuses: refuseEd,
    },
    { name: 'temple', asks: 'Length of the temple in mm', field: ['temple'], suggest: () => '145' },
    { name: 'bridge', asks: 'Bridge', choices: () => BRIDGES, suggest: () => 'saddle' },
    {
      name: 'difference',
      asks: "What it costs more or less than the frame's price",
      field: ['priceDifference'],
      suggest: () => '0',
    },
  ],
  value: entryOf,
  schema: (currency) => size(moneyIn(currency)),
  changes: (answers, known) => {
    const path = join(known.folder, 'frames', `${answers['frame']}.md`);
    const item = stringify(entryOf(answers, known), { lineWidth: 0 });
    const text = withItem(readFileSync(path, 'utf8'), ['sizes'], item);
    if (text === null)
      return new Error(
        `${path}: its sizes cannot be added to without touching the rest. Write it in by hand.`,
      );
    return [{ path, text, fresh: false }];
  },
  next: ({ frame }) => [
    'Where its lens was traced: outline: { traced: … }; npm run import -- outline brings the trace in.',
    `npm run dev shows it at /frames/${frame}/`,
  ],
};
