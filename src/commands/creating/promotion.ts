/** `npm run new -- promotion` */

import { fileRecipe } from './fileRecipe.ts';
import { collectionIds } from './frame.ts';
import { type Answers, type Known, named, orNone, priced } from './recipe.ts';

const GIFTS = ['percent', 'amount', 'lenses', 'shipping'] as const;

const takesOff = ({ gift }: Answers) => gift === 'percent' || gift === 'amount';
const givesLens = ({ gift }: Answers) => gift === 'lenses';
const idsOf = (kind: 'designs' | 'materials' | 'tints' | 'coatings') => (known: Known) =>
  known.content[kind].map(({ id }) => id);

function giftOf(answers: Answers, { currency }: Known): unknown {
  const { gift, percent, amount, on, design, material } = answers;
  if (gift === 'percent') return { percent: orNone(percent), on };
  if (gift === 'amount') return { amount: priced(amount, currency), on };
  if (gift === 'shipping') return { shipping: 'free' };
  const [tint, coating] = [orNone(answers['tint']), orNone(answers['coating'])];
  return { includedLens: { design, material, tint, coating } };
}

/** A promotion for everything or for some collections. */
export const promotionRecipe = fileRecipe({
  kind: 'promotion',
  folder: 'promotions',
  says: 'a promotion, dated or not',
  questions: [
    { name: 'title', asks: 'Title', field: ['title'] },
    { name: 'sentence', asks: 'What the line of a quote says', field: ['sentence'] },
    { name: 'gift', asks: 'What it gives', choices: () => GIFTS, suggest: () => 'percent' },
    {
      name: 'percent',
      asks: 'How many percent off',
      field: ['gift', 'percent'],
      applies: ({ gift }) => gift === 'percent',
    },
    {
      name: 'amount',
      asks: 'How much off',
      field: ['gift', 'amount'],
      applies: ({ gift }) => gift === 'amount',
    },
    {
      name: 'on',
      asks: 'Off what',
      choices: () => ['frame', 'lenses', 'pair'],
      suggest: () => 'frame',
      applies: takesOff,
    },
    { name: 'design', asks: 'Included design', choices: idsOf('designs'), applies: givesLens },
    { name: 'material', asks: 'Included material', choices: idsOf('materials'), applies: givesLens },
    { name: 'tint', asks: 'Included tint', choices: idsOf('tints'), suggest: () => '', applies: givesLens },
    {
      name: 'coating',
      asks: 'Included coating',
      choices: idsOf('coatings'),
      suggest: () => '',
      applies: givesLens,
    },
    { name: 'starts', asks: 'First day, as 2026-11-25', field: ['starts'], suggest: () => '' },
    { name: 'ends', asks: 'Last day, as 2026-12-05', field: ['ends'], suggest: () => '' },
    {
      name: 'code',
      asks: 'Code that the shopper types; nothing lets it apply by itself',
      field: ['code'],
      suggest: () => '',
    },
    {
      name: 'collections',
      asks: 'For these collections alone, with commas; nothing means all',
      choices: collectionIds,
      many: true,
      suggest: () => '',
    },
  ],
  value: (answers, known) => ({
    title: answers['title'],
    sentence: answers['sentence'],
    order: 1000,
    starts: orNone(answers['starts']),
    ends: orNone(answers['ends']),
    code: orNone(answers['code']),
    scope: named(answers['collections']).length > 0 ? { collections: named(answers['collections']) } : {},
    gift: giftOf(answers, known),
    joins: 'none',
  }),
  next: () => [
    'It joins no other promotion; name those that it may be used with in joins, on both sides.',
    'order decides which promotion is tried first: look at those that are there.',
    'npm run dev shows it at /promotions/',
  ],
});
