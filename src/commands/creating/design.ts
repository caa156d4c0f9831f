/** `npm run new -- design` */
import { DESIGN_KINDS, type DesignKind } from '../../catalogue/design.ts';
import { fileRecipe } from './fileRecipe.ts';
import { optionFields, optionNext, optionQuestions } from './option.ts';
import { type Answers, numeric } from './recipe.ts';

const hasCorridor = ({ kind }: Answers) => kind === 'progressive' || kind === 'office';
const hasSegment = ({ kind }: Answers) => kind === 'bifocal';

const USES: Readonly<Record<DesignKind, readonly string[]>> = {
  'single-vision': ['distance', 'intermediate', 'near'],
  progressive: ['all'],
  office: ['intermediate'],
  bifocal: ['all'],
  plano: ['none'],
};

/** Figures to begin with: common practice, to be mended from the maker's sheet. */
function corridorOf(answers: Answers) {
  if (!hasCorridor(answers)) return null;
  return {
    lengthMm: numeric(answers['corridor']),
    definition: answers['definition'],
    leastFittingHeightMm: null,
    leastAboveCrossMm: 9,
    referenceBelowCrossMm: answers['kind'] === 'office' ? 0 : 4,
    nearInsetMm: null,
    thinningPrismShare: 0,
    addShareAtCross: answers['kind'] === 'office' ? 0.5 : 0,
  };
}

function segmentOf(answers: Answers) {
  if (!hasSegment(answers)) return null;
  return {
    widthMm: numeric(answers['segment']),
    depthMm: 19,
    centreBelowTopMm: 5,
    leastHeightMm: 13,
    blankDropMm: 5,
    blankInsetMm: 2,
  };
}

/** A design in every material until the owner says otherwise. */
export const designRecipe = fileRecipe({
  kind: 'design',
  folder: 'designs',
  says: 'a lens design',
  questions: [
    ...optionQuestions,
    { name: 'kind', asks: 'Kind', choices: () => DESIGN_KINDS },
    {
      name: 'corridor',
      asks: 'Length of the corridor in mm',
      field: ['corridor', 'lengthMm'],
      suggest: () => '14',
      applies: hasCorridor,
    },
    {
      name: 'definition',
      asks: 'How the maker defines that length',
      field: ['corridor', 'definition'],
      suggest: () => 'From the fitting cross down to where 85 % of the add is reached',
      applies: hasCorridor,
    },
    {
      name: 'segment',
      asks: 'Width of the segment in mm',
      field: ['segment', 'widthMm'],
      suggest: () => '28',
      applies: hasSegment,
    },
  ],
  value: (answers, known) => ({
    ...optionFields(answers, known),
    kind: answers['kind'],
    uses: USES[answers['kind'] as DesignKind] ?? [],
    materials: 'all',
    sphereD: [-8, 6],
    cylinderD: 4,
    addD: hasCorridor(answers) || hasSegment(answers) ? [0.75, 3.5] : null,
    prism: 4,
    faceFormDeg: 12,
    corridor: corridorOf(answers),
    segment: segmentOf(answers),
    limits: [],
    surcharges: [],
  }),
  next: () => [
    "Mend from the maker's sheet: sphereD, cylinderD, addD, prism, faceFormDeg and what follows.",
    ...optionNext,
  ],
});
