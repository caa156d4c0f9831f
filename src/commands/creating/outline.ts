/** `npm run new -- outline`: a lens shape from radii that were measured, in the form of a traced one. */
import { join } from 'node:path';
import { centreTrace } from '../../catalogue/resolve/outline.ts';
import { fileSchema } from '../../catalogue/schema/editorSchemas.ts';
import { box, mirror } from '../../optics/outline.ts';
import { schemaLine } from '../schemaLine.ts';
import { type Answers, numeric, type Recipe } from './recipe.ts';

/** A radius by whatever parts it from the next one; a list in brackets will do too. */
const radiiOf = ({ radii = '' }: Answers) =>
  radii
    .replace(/[[\]]/g, ' ')
    .trim()
    .split(/[\s,;]+/)
    .map(numeric);

/** The radii of the right lens: those of the left one as a mirror shows them. */
function rightOf(answers: Answers): readonly (number | string)[] {
  const radii = radiiOf(answers);
  const radiiMm = radii.filter((radius) => typeof radius === 'number');
  if (answers['eye'] !== 'left' || radiiMm.length < radii.length) return radii;
  return mirror({ radiiMm }).radiiMm.map((radius) => Math.round(radius * 1000) / 1000);
}

const measured = (answers: Answers) => {
  const radiiMm = rightOf(answers).map(Number);
  const centred = radiiMm.every((radius) => radius > 0) ? centreTrace(radiiMm) : null;
  return centred === null ? null : box(centred);
};

const shown = (mm: number) => String(Math.round(mm * 10) / 10);

function linesOf(radii: readonly (number | string)[]): string {
  const lines = Array.from({ length: Math.ceil(radii.length / 12) }, (_, at) =>
    radii.slice(12 * at, 12 * at + 12).join(', '),
  );
  return lines.map((line) => `    ${line},`).join('\n');
}

/** An outline of one size, by its radii. */
export const outlineRecipe: Recipe = {
  name: 'outline',
  says: 'a lens shape from radii that you measured',
  questions: [
    { name: 'id', asks: 'Its id: the name of the file in content/outlines, such as stint-49' },
    {
      name: 'eye',
      asks: 'Which lens, seen from the front',
      choices: () => ['right', 'left'],
      suggest: () => 'right',
    },
    {
      name: 'radii',
      asks: 'At least 36 radii in mm at equal angles, counter-clockwise from +x (the right side as you see it), with spaces',
      field: ['radiiMm'],
      refuses: (answers) =>
        measured(answers) === null
          ? 'Expected the whole edge to be seen from the middle of its box; a radius is out of line.'
          : null,
    },
  ],
  value: (answers) => ({ radiiMm: rightOf(answers) }),
  schema: (currency) => fileSchema('outline', currency),
  changes: (answers, { folder }) => {
    const path = `outlines/${answers['id']}.yaml`;
    const text = `${schemaLine(path)}
# The right lens from the front: radii in mm at equal angles, counter-clockwise from the nose.
radiiMm:
  [
${linesOf(rightOf(answers))}
  ]
`;
    return [{ path: join(folder, path), text, fresh: true }];
  },
  next: (answers) => {
    const size = measured(answers);
    const [a, b, ed] = [size?.aMm, size?.bMm, size?.edMm].map((mm) => shown(mm ?? 0));
    return [
      `In the size that it is of, write: a: ${a}, b: ${b}, ed: ${ed}, outline: { traced: ${answers['id']} }`,
    ];
  },
};
