/** What the recipes of a frame and of a size say alike of the box and its outline. */
import { fitFamily, OUTLINE_FAMILIES, type OutlineFamily } from '../../optics/outlineFamily.ts';
import { usualEdMm } from '../../quote/ownFrame.ts';
import { type Answers, numeric } from './recipe.ts';

/** The ED of the family, to 0.1 mm, until it is measured. */
export function suggestEd({ a, b, family }: Answers): string | null {
  const box = { a: numeric(a), b: numeric(b) };
  if (typeof box.a !== 'number' || typeof box.b !== 'number') return null;
  const edMm = usualEdMm(family as OutlineFamily, { a: box.a, b: box.b });
  return Number.isFinite(edMm) ? String(Math.round(edMm * 10) / 10) : null;
}

/** An ED that no outline of the family has in this box, with the limits of those that there are. */
export function refuseEd({ a, b, ed, family }: Answers): string | null {
  const [aMm, bMm, edMm] = [numeric(a), numeric(b), numeric(ed)];
  if (typeof aMm !== 'number' || typeof bMm !== 'number' || typeof edMm !== 'number') return null;
  if (!OUTLINE_FAMILIES.some((known) => known === family)) return null;
  const fit = fitFamily(family as OutlineFamily, { aMm, bMm, edMm });
  if (fit.ok || !(fit.leastEdMm <= fit.mostEdMm)) return null;
  const least = (Math.ceil(fit.leastEdMm * 10) / 10).toFixed(1);
  const most = (Math.floor(fit.mostEdMm * 10) / 10).toFixed(1);
  return `Expected ${least} to ${most} mm, which ${family} reaches in a box of ${a} by ${b}; found ${ed}. Measure again, or choose another family.`;
}

/** `51-19` of A 51.2 and DBL 19. */
export function sizeName({ a, dbl }: Answers): string {
  return `${Math.round(Number(numeric(a)))}-${Math.round(Number(numeric(dbl)))}`;
}

/** The measured fields of a size, as they are written into a frame's file. */
export const boxFields = (answers: Answers) => ({
  a: numeric(answers['a']),
  b: numeric(answers['b']),
  dbl: numeric(answers['dbl']),
  ed: numeric(answers['ed']),
  temple: numeric(answers['temple']),
  bridge: answers['bridge'],
  outline: { family: answers['family'] },
});
