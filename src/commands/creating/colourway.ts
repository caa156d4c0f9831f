/** `npm run new -- colourway`: an entry at the end of the colourways of a frame that is there. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stringify } from 'yaml';
import { sound } from '../../catalogue/content.ts';
import { STOCKS } from '../../catalogue/frame.ts';
import { slug } from '../../catalogue/reading/folders.ts';
import { colourway } from '../../catalogue/schema/colourway.ts';
import { moneyIn } from '../../catalogue/schema/money.ts';
import { withItem } from '../editFields.ts';
import { type Answers, type Known, priced, type Recipe } from './recipe.ts';

function entryOf({ code, name, front, difference, stock }: Answers, { currency }: Known) {
  return { code, name, front, priceDifference: priced(difference, currency), stock };
}

/** A code that the frame has already. */
function taken({ frame, code }: Answers, { content }: Known): string | null {
  const found = sound(content.frames).find(({ id }) => id === frame);
  const has = found?.value.colourways.some((one) => one.code === code);
  return has ? `The frame has a colourway "${code}" already.` : null;
}

/** A colourway of a frame. */
export const colourwayRecipe: Recipe = {
  name: 'colourway',
  says: 'a colourway of a frame that is there',
  list: 'colourways',
  questions: [
    { name: 'frame', asks: 'Frame', choices: ({ content }) => content.frames.map(({ id }) => id) },
    { name: 'name', asks: 'Name of the colourway', field: ['name'] },
    {
      name: 'code',
      asks: 'Code that an order names it by',
      field: ['code'],
      suggest: ({ name }) => slug(name ?? '') || null,
      refuses: taken,
    },
    { name: 'front', asks: 'Its colour for drawings, such as #25324a', field: ['front'] },
    {
      name: 'difference',
      asks: "What it costs more or less than the frame's price",
      field: ['priceDifference'],
      suggest: () => '0',
    },
    { name: 'stock', asks: 'Stock', choices: () => STOCKS, suggest: () => 'in-stock' },
  ],
  value: entryOf,
  schema: (currency) => colourway(moneyIn(currency)),
  changes: (answers, known) => {
    const path = join(known.folder, 'frames', `${answers['frame']}.md`);
    const text = withItem(
      readFileSync(path, 'utf8'),
      ['colourways'],
      stringify(entryOf(answers, known), { lineWidth: 0 }),
    );
    if (text === null)
      return new Error(
        `${path}: its colourways cannot be added to without touching the rest. Write it in by hand.`,
      );
    return [{ path, text, fresh: false }];
  },
  next: ({ frame }) => [
    'Where its front is not one colour: { colour, second, finish }; bridge and temples follow the front.',
    `npm run dev shows it at /frames/${frame}/`,
  ],
};
