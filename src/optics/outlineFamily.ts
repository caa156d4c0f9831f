/**
 * Families of lens shapes, for frames whose outline was not traced: the shape of a family that has the given A, B
 * and ED. The family's curve is stretched to the box; ED grows with its squareness, so that is solved for ED. An
 * estimate, not a tracing. Shapes are of the right lens seen from the front.
 */
import { familyCurve, type OutlineFamily } from './familyCurve.ts';
import { box, type OutlinePoints } from './outline.ts';
import { outlineFromPoints } from './outlineShape.ts';
import { type Measure, solveRising } from './solveRising.ts';
import type { Outline } from './types.ts';

export { OUTLINE_FAMILIES, type OutlineFamily } from './familyCurve.ts';

/** Box width, box height and effective diameter, mm. */
export interface BoxedSize {
  readonly aMm: number;
  readonly bMm: number;
  readonly edMm: number;
}

/** What a family answers: the outline, or the range of ED which it reaches in that box (mm). */
export type FitResult =
  | { readonly ok: true; readonly outline: Outline }
  | {
      readonly ok: false;
      readonly reason: 'size-not-positive' | 'ed-too-small' | 'ed-too-large';
      readonly leastEdMm: number;
      readonly mostEdMm: number;
    };

/** Points of a curve that is measured, and of one that is sampled. */
const ROUGH = 360;
const FINE = 1440;

/** How a curve is stretched to a box of A by B. */
function stretch({ xMm, yMm }: OutlinePoints, aMm: number, bMm: number) {
  let [loX, hiX] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [loY, hiY] = [loX, hiX];
  for (let i = 0; i < xMm.length; i++) {
    const x = xMm[i] as number;
    const y = yMm[i] as number;
    if (x < loX) loX = x;
    if (x > hiX) hiX = x;
    if (y < loY) loY = y;
    if (y > hiY) hiY = y;
  }
  return {
    midX: (loX + hiX) / 2,
    midY: (loY + hiY) / 2,
    scaleX: aMm / (hiX - loX),
    scaleY: bMm / (hiY - loY),
  };
}

/** ED of the stretched curve by its points alone: a hair small, but quick. */
function roughEdMm(raw: OutlinePoints, aMm: number, bMm: number): number {
  const { midX, midY, scaleX, scaleY } = stretch(raw, aMm, bMm);
  let farthest2 = 0;
  for (let i = 0; i < raw.xMm.length; i++) {
    const x = ((raw.xMm[i] as number) - midX) * scaleX;
    const y = ((raw.yMm[i] as number) - midY) * scaleY;
    const r2 = x * x + y * y;
    if (r2 > farthest2) farthest2 = r2;
  }
  return 2 * Math.sqrt(farthest2);
}

/** The curve stretched to a box of A by B and sampled from the boxed centre. */
function sampled(raw: OutlinePoints, aMm: number, bMm: number): Outline {
  let { midX, midY, scaleX, scaleY } = stretch(raw, aMm, bMm);
  let outline: Outline = { radiiMm: [] };
  // 360 radii can miss the very extreme of a tight corner: the later passes take that up.
  for (let pass = 0; pass < 5; pass++) {
    const xMm = raw.xMm.map((x) => (x - midX) * scaleX);
    const yMm = raw.yMm.map((y) => (y - midY) * scaleY);
    outline = outlineFromPoints({ xMm, yMm }, 360) ?? outline;
    const b = box(outline);
    const offX = (b.minX + b.maxX) / 2;
    const offY = (b.minY + b.maxY) / 2;
    if (Math.max(Math.abs(b.aMm - aMm), Math.abs(b.bMm - bMm), Math.abs(offX), Math.abs(offY)) < 1e-4) break;
    midX += offX / scaleX;
    midY += offY / scaleY;
    scaleX *= aMm / b.aMm;
    scaleY *= bMm / b.bMm;
  }
  return outline;
}

/**
 * The shape of `family` with box A by B (to 0.005 mm) and effective diameter ED (to 0.01 mm), 360 radii from the
 * boxed centre, as the right lens; or why there is none, with the range of ED that the family reaches, mm.
 */
export function fitFamily(family: OutlineFamily, size: BoxedSize): FitResult {
  const { aMm, bMm, edMm } = size;
  if (!(aMm > 0 && bMm > 0 && edMm > 0 && aMm < 200 && bMm < 200 && edMm < 400)) {
    return { ok: false, reason: 'size-not-positive', leastEdMm: Number.NaN, mostEdMm: Number.NaN };
  }
  const rough = kept((squareness) => roughEdMm(familyCurve(family, squareness, ROUGH), aMm, bMm));
  const at = (squareness: number) => sampled(familyCurve(family, squareness, FINE), aMm, bMm);
  // Only near an end of the range does it take the sampled shape to tell whether the ED is reached.
  if (edMm < rough(0) + 0.1 || edMm > rough(1) - 0.1) {
    const leastEdMm = box(at(0)).edMm;
    const mostEdMm = box(at(1)).edMm;
    if (edMm < leastEdMm - 0.005) return { ok: false, reason: 'ed-too-small', leastEdMm, mostEdMm };
    if (edMm > mostEdMm + 0.005) return { ok: false, reason: 'ed-too-large', leastEdMm, mostEdMm };
  }
  // The rough measure is off by the same hair at neighbouring shapes, so it is solved for a corrected aim.
  let aimMm = edMm;
  let outline = at(solveRising(rough, aimMm));
  for (let pass = 0; pass < 4 && Math.abs(box(outline).edMm - edMm) > 1e-3; pass++) {
    aimMm += edMm - box(outline).edMm;
    outline = at(solveRising(rough, aimMm));
  }
  return { ok: true, outline };
}

/** A measure that is asked again and again at the same places, those at the ends above all. */
function kept(measure: Measure): Measure {
  const known = new Map<number, number>();
  return (squareness) => {
    let found = known.get(squareness);
    if (found === undefined) {
      found = measure(squareness);
      known.set(squareness, found);
    }
    return found;
  };
}
