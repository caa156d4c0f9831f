/** `npm run new -- coating` */
import { COATED_FACES } from '../../catalogue/coating.ts';
import { fileRecipe } from './fileRecipe.ts';
import { optionFields, optionNext, optionQuestions, yesOrNo } from './option.ts';
import { numeric, truth } from './recipe.ts';

/** A coating that goes on every material and tint until the owner says otherwise. */
export const coatingRecipe = fileRecipe({
  kind: 'coating',
  folder: 'coatings',
  says: 'a coating',
  questions: [
    ...optionQuestions,
    {
      name: 'faces',
      asks: 'Faces with less reflection',
      choices: () => COATED_FACES,
      suggest: () => 'both',
    },
    {
      name: 'reflectance',
      asks: 'Luminous reflectance left on such a face, 0 to 1',
      field: ['residualReflectance'],
      suggest: () => '0.012',
      applies: ({ faces }) => faces !== 'none',
    },
    { name: 'hard', asks: 'Does it harden the surface', choices: yesOrNo, suggest: () => 'yes' },
  ],
  value: (answers, known) => ({
    ...optionFields(answers, known),
    faces: answers['faces'],
    residualReflectance: answers['faces'] === 'none' ? null : numeric(answers['reflectance']),
    hard: truth(answers['hard']),
    materials: 'all',
    tints: 'all',
    limits: [],
  }),
  next: () => optionNext,
});
