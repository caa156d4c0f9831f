/** `npm run new -- frame` */
import { BRIDGES, MOUNTINGS } from '../../catalogue/frame.ts';
import { BOX_AS_BEGUN, HOLES_AS_BEGUN, MASS_AS_BEGUN_G, rimAsBegun } from '../../catalogue/frameAsBegun.ts';
import { slug } from '../../catalogue/reading/folders.ts';
import { valueAt } from '../../catalogue/schema/parse.ts';
import { OUTLINE_FAMILIES } from '../../optics/outlineFamily.ts';
import { boxFields, refuseEd, sizeName, suggestEd } from './boxed.ts';
import { fileRecipe } from './fileRecipe.ts';
import { type Known, named, numeric, priced } from './recipe.ts';

/** Ids of the collections in shop.yaml, as far as it can be read. */
export function collectionIds({ content }: Known): string[] {
  const list = valueAt(content.shop?.origin.raw, ['collections']);
  return Array.isArray(list) ? list.map((item) => String(valueAt(item, ['id']))) : [];
}

const size = (field: string) => ['sizes', 0, field];

/** A frame in one size and one colourway. */
export const frameRecipe = fileRecipe({
  kind: 'frame',
  folder: 'frames',
  says: 'a frame in one size and one colourway',
  questions: [
    { name: 'model', asks: 'Name of the model', field: ['model'] },
    { name: 'collection', asks: 'Collection', field: ['collection'], choices: collectionIds },
    { name: 'summary', asks: 'One sentence for lists', field: ['summary'] },
    { name: 'price', asks: 'Price without lenses', field: ['price'] },
    { name: 'material', asks: 'What the front is made of', field: ['material'] },
    { name: 'mounting', asks: 'Mounting', choices: () => MOUNTINGS, suggest: () => 'full' },
    { name: 'a', asks: 'A, width of the lens box in mm', field: size('a') },
    { name: 'b', asks: 'B, height of the lens box in mm', field: size('b') },
    { name: 'dbl', asks: 'DBL, distance between the boxes in mm', field: size('dbl') },
    { name: 'family', asks: 'Family of the shape', choices: () => OUTLINE_FAMILIES, suggest: () => 'panto' },
    {
      name: 'ed',
      asks: 'ED, twice the longest radius from the middle of the box in mm',
      field: size('ed'),
      suggest: suggestEd,
      refuses: refuseEd,
    },
    { name: 'temple', asks: 'Length of the temple in mm', field: size('temple'), suggest: () => '145' },
    { name: 'bridge', asks: 'Bridge', choices: () => BRIDGES, suggest: () => 'saddle' },
    {
      name: 'mass',
      asks: 'Mass without lenses in g',
      field: ['massG'],
      suggest: () => String(MASS_AS_BEGUN_G),
    },
    { name: 'colourway', asks: 'Name of the first colourway', field: ['colourways', 0, 'name'] },
    {
      name: 'colour',
      asks: 'Its colour for drawings, such as #25324a',
      field: ['colourways', 0, 'front'],
      suggest: () => '#25324a',
    },
    {
      name: 'box',
      asks: 'What is in the box, with commas',
      field: ['inTheBox'],
      suggest: () => BOX_AS_BEGUN.join(', '),
    },
  ],
  value: (answers, { currency }) => ({
    model: answers['model'],
    collection: answers['collection'],
    summary: answers['summary'],
    price: priced(answers['price'], currency),
    material: answers['material'],
    wearer: 'adult',
    sun: false,
    mounting: answers['mounting'] === 'drilled' ? { drilled: HOLES_AS_BEGUN } : answers['mounting'],
    ...rimAsBegun(answers['mounting'] ?? ''),
    massG: numeric(answers['mass']),
    comesFitted: 'Clear demonstration lenses, which are not for wearing',
    inTheBox: named(answers['box']),
    colourways: [
      {
        code: slug(answers['colourway'] ?? ''),
        name: answers['colourway'],
        front: answers['colour'],
        priceDifference: priced('0', currency),
        stock: 'in-stock',
      },
    ],
    sizes: [
      {
        id: sizeName(answers),
        ...boxFields(answers),
      },
    ],
  }),
  next: ({ id, mounting }) => [
    mounting === 'drilled'
      ? 'Measure and mend: the holes, faceFormDeg, frameCurveD. A drilled lens wants a traced outline: npm run import.'
      : 'Measure and mend: rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD.',
    'Write its story below the second line ---, in Markdown.',
    `npm run dev shows it at /frames/${id}/`,
  ],
});
