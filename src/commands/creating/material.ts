/** `npm run new -- material` */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sound } from '../../catalogue/content.ts';
import { FOLDERS } from '../../catalogue/reading/folders.ts';
import { withItem } from '../editFields.ts';
import type { Change } from '../writeAll.ts';
import { fileRecipe } from './fileRecipe.ts';
import { optionFields, optionNext, optionQuestions, yesOrNo } from './option.ts';
import { type Answers, type Known, named, numeric, type Recipe, truth } from './recipe.ts';

/** ne from nd and the Abbe number: a quarter of the dispersion above, from memory; the maker's sheet has it. */
function suggestNe(answers: Answers): string | null {
  const [nd, abbe] = [numeric(answers['nd']), numeric(answers['abbe'])];
  if (typeof nd !== 'number' || typeof abbe !== 'number' || abbe <= 0) return null;
  return String(Math.round((nd + (0.24 * (nd - 1)) / abbe) * 1000) / 1000);
}

const designIds = ({ content }: Known) => content.designs.map(({ id }) => id);

/** None where a design is made in every material; else the first, since a material that nothing is made in is a fault. */
function suggestDesigns(_: Answers, known: Known): string {
  const designs = sound(known.content.designs);
  return designs.some(({ value }) => value.materials === 'all') ? '' : (designs[0]?.id ?? '');
}

/** The designs' files with the material in their lists. */
function designChanges({ id = '', designs }: Answers, { folder, content }: Known): Change[] | Error {
  const changes: Change[] = [];
  for (const { id: design, value } of sound(content.designs)) {
    if (!named(designs).includes(design) || value.materials === 'all') continue;
    const path = join(folder, FOLDERS.designs.folder, `${design}${FOLDERS.designs.ending}`);
    const text = withItem(readFileSync(path, 'utf8'), ['materials'], id);
    if (text === null)
      return new Error(`${path}: its materials cannot be added to without touching the rest.`);
    changes.push({ path, text, fresh: false });
  }
  return changes;
}

const file = fileRecipe({
  kind: 'material',
  folder: 'materials',
  says: 'a lens material',
  questions: [
    ...optionQuestions,
    { name: 'nd', asks: 'Refractive index nd', field: ['nd'] },
    { name: 'abbe', asks: 'Abbe number', field: ['abbe'] },
    { name: 'ne', asks: 'Refractive index ne', field: ['ne'], suggest: suggestNe },
    { name: 'density', asks: 'Density in g/cm³', field: ['densityGPerCm3'] },
    { name: 'uv', asks: 'Longest wavelength that it stops, nm', field: ['uvCutOffNm'], suggest: () => '385' },
    { name: 'impact', asks: 'Impact resistant enough for children', choices: yesOrNo, suggest: () => 'no' },
    { name: 'hard', asks: 'Does it always come hard-coated', choices: yesOrNo, suggest: () => 'yes' },
    {
      name: 'designs',
      asks: 'Designs that it is made in besides those that say all, with commas',
      choices: designIds,
      many: true,
      suggest: suggestDesigns,
    },
  ],
  value: (answers, known) => ({
    ...optionFields(answers, known),
    nd: numeric(answers['nd']),
    ne: numeric(answers['ne']),
    abbe: numeric(answers['abbe']),
    densityGPerCm3: numeric(answers['density']),
    uvCutOffNm: numeric(answers['uv']),
    leastMm: { centre: 1.5, edge: 1, groove: 1.8, hole: null },
    mountings: ['full', 'grooved'],
    impactResistant: truth(answers['impact']),
    alwaysHardCoated: truth(answers['hard']),
    powerD: [-10, 6],
    stock: [],
    surfaced: {
      diametersMm: [65, 70, 75],
      referenceInMm: 0,
      referenceUpMm: 0,
      mostMoveMm: 0,
      baseCurves: [2, 4, 6, 8],
    },
    limits: [],
    surcharges: [],
  }),
  next: () => [
    "Mend from the maker's sheet: leastMm, mountings, powerD, diameters and base curves.",
    ...optionNext,
  ],
});

/** A material whose back is surfaced to order; ready-made lenses are added to its file. */
export const materialRecipe: Recipe = {
  ...file,
  changes: (answers, known) => {
    const [own, others] = [file.changes(answers, known), designChanges(answers, known)];
    return own instanceof Error ? own : others instanceof Error ? others : [...own, ...others];
  },
};
