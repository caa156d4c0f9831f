import type { LensToMake } from './lensToMake.ts';
import type { OutlinePoints } from './outline.ts';
import { backFor } from './surfacePower.ts';
import { rise, type ThicknessField, thicknessField } from './thicknessField.ts';
import { opticalCentreDemand } from './thinnestInside.ts';
import type { FrontSurface } from './types.ts';

/**
 * A first guess of the centre thickness, mm: 24 points of the edge are asked, then the neighbourhood of its thinnest
 * point, and the thickness is settled there. `first` is the lens at its least centre thickness. It saves the second full pass over the edge.
 */
export function roughThickness(
  lens: LensToMake,
  front: FrontSurface,
  shape: OutlinePoints,
  first: ThicknessField,
): number {
  const n = shape.xMm.length;
  const { centreMm, edgeMm } = lens.limits;
  const riseAt = (field: ThicknessField, i: number) =>
    rise(field, (shape.xMm[i] as number) - lens.reference.xMm, (shape.yMm[i] as number) - lens.reference.yMm);
  let field = first;
  const stride = Math.max(1, Math.floor(n / 24));
  let at = 0;
  let least = riseAt(field, 0);
  for (let i = stride; i < n; i += stride) {
    const d = riseAt(field, i);
    if (d < least) {
      least = d;
      at = i;
    }
  }
  const inner = Math.max(centreMm, opticalCentreDemand(lens, field)?.needMm ?? 0);
  if (!(edgeMm - least > inner - 0.3)) return inner;
  for (let step = stride >> 1; step >= 1; step >>= 1) {
    for (const i of [(at + step) % n, (at - step + n) % n]) {
      const d = riseAt(field, i);
      if (d < least) {
        least = d;
        at = i;
      }
    }
  }
  let thicknessMm = Math.max(inner, edgeMm - least);
  for (let pass = 0; pass < 2; pass++) {
    field = thicknessField(front, backFor(lens, thicknessMm), first.profile);
    thicknessMm = Math.max(inner, edgeMm - riseAt(field, at));
  }
  return thicknessMm < 200 ? thicknessMm : centreMm;
}
