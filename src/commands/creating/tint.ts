/** `npm run new -- tint` */
import { TINT_KINDS } from '../../catalogue/tint.ts';
import { fileRecipe } from './fileRecipe.ts';
import { optionFields, optionNext, optionQuestions } from './option.ts';
import { type Answers, numeric } from './recipe.ts';

/** A gradient has a top and a foot, a photochromic tint a clear and a dark state; the others one. */
function statesOf({ kind, transmittance, colour }: Answers) {
  const dark = { transmittance: numeric(transmittance), colour };
  const light = { transmittance: 0.85, colour: '#f4f1ec' };
  if (kind === 'gradient')
    return [
      { name: 'at the top', ...dark, temperatureC: null },
      { name: 'at the foot', ...light, temperatureC: null },
    ];
  if (kind === 'photochromic')
    return [
      { name: 'clear at 23 °C', ...light, temperatureC: 23 },
      { name: 'dark at 23 °C', ...dark, temperatureC: 23 },
    ];
  return [{ name: 'even over the whole lens', ...dark, temperatureC: null }];
}

/** A tint that goes with every material and design until the owner says otherwise. */
export const tintRecipe = fileRecipe({
  kind: 'tint',
  folder: 'tints',
  says: 'a tint',
  questions: [
    ...optionQuestions,
    { name: 'kind', asks: 'Kind', choices: () => TINT_KINDS, suggest: () => 'solid' },
    {
      name: 'transmittance',
      asks: 'Luminous transmittance where it is darkest, above 0 to 1',
      field: ['states', 0, 'transmittance'],
      suggest: ({ kind }) => (kind === 'clear' ? '1' : '0.15'),
    },
    {
      name: 'colour',
      asks: 'Colour for drawings where it is darkest',
      field: ['states', 0, 'colour'],
      suggest: ({ kind }) => (kind === 'clear' ? '#ffffff' : '#5f5a55'),
    },
  ],
  value: (answers, known) => ({
    ...optionFields(answers, known),
    kind: answers['kind'],
    polarised: answers['kind'] === 'polarised',
    mirrored: answers['kind'] === 'mirror',
    states: statesOf(answers),
    spectrum: null,
    materials: 'all',
    designs: 'all',
    limits: [],
  }),
  next: ({ kind }) => [
    ...(kind === 'gradient' || kind === 'photochromic' ? ['Mend the lighter of its states.'] : []),
    ...optionNext,
  ],
});
