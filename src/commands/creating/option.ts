/** What the recipes of all lens options ask alike. */
import type { Answers, Known, Question } from './recipe.ts';
import { priced } from './recipe.ts';

/** The first questions of a design, material, tint or coating. */
export const optionQuestions: readonly Question[] = [
  { name: 'name', asks: 'Name that the shopper reads', field: ['name'] },
  { name: 'summary', asks: 'One sentence for the worksheet', field: ['summary'] },
  { name: 'price', asks: 'Price of a pair, added to the lenses', field: ['price'] },
];

/** Their fields. */
export function optionFields(answers: Answers, { currency }: Known) {
  const { name, summary } = answers;
  return { name, summary, order: 1000, price: priced(answers['price'], currency) };
}

/** What is left to do once an option is written. */
export const optionNext: readonly string[] = [
  'Name in materials, designs or tints what it can be had with; all means every one.',
  'What does not go together for a reason: limits, with the reason in because.',
  'Say below the second line --- what it is for, what it gains and what it costs besides money.',
  'npm run dev shows it at /lenses/',
];

/** `yes` and `no`, for a question that is answered by one of them. */
export const yesOrNo = (): readonly string[] => ['yes', 'no'];
