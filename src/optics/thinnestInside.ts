/**
 * The thinnest places inside a lens. Without prism a lens of spherical front is thinnest at its centre or edge, so
 * nothing is asked; with prism a minus lens has its optical centre beside the reference point; a flattened front or
 * a progressive is searched over a grid.
 */
import type { Demand } from './centreThickness.ts';
import type { LensToMake } from './lensToMake.ts';
import { directions, inside } from './outline.ts';
import { rise, type ThicknessField } from './thicknessField.ts';
import type { PointMm } from './types.ts';

/** Adds what the inside of the lens demands to `demands`: nothing for most lenses. */
export function interiorDemands(lens: LensToMake, field: ThicknessField, demands: Demand[]): void {
  const centre = opticalCentreDemand(lens, field);
  if (centre) demands.push(centre);
  if (lens.frontConic !== 0 || lens.profile !== null) demands.push(scanned(lens, field));
}

/** The demand of the optical centre of a lens with prism where that is thinnest and inside the outline, or null. */
export function opticalCentreDemand(lens: LensToMake, field: ThicknessField): Demand | null {
  if (lens.prism.x === 0 && lens.prism.y === 0) return null;
  const from = opticalCentre(field);
  if (!from) return null;
  const at = { xMm: from.xMm + lens.reference.xMm, yMm: from.yMm + lens.reference.yMm };
  if (!inside(lens.outline, at)) return null;
  const { centreMm } = lens.limits;
  return { by: 'centre', limitMm: centreMm, needMm: centreMm - rise(field, from.xMm, from.yMm), at };
}

/**
 * The place of least thickness from the reference point, mm, by Newton's method; null when the thickness is not
 * bowl-shaped there (plus and mixed lenses) or it lies far outside any lens.
 */
export function opticalCentre(field: ThicknessField): PointMm | null {
  const h = 0.25;
  let x = 0;
  let y = 0;
  for (let pass = 0; pass < 8; pass++) {
    const here = rise(field, x, y);
    const right = rise(field, x + h, y);
    const left = rise(field, x - h, y);
    const up = rise(field, x, y + h);
    const down = rise(field, x, y - h);
    const gx = (right - left) / (2 * h);
    const gy = (up - down) / (2 * h);
    const xx = (right - 2 * here + left) / (h * h);
    const yy = (up - 2 * here + down) / (h * h);
    const xy =
      (rise(field, x + h, y + h) -
        rise(field, x + h, y - h) -
        (rise(field, x - h, y + h) - rise(field, x - h, y - h))) /
      (4 * h * h);
    const det = xx * yy - xy * xy;
    if (!(det > 1e-12 && xx + yy > 0)) return null;
    const dx = (xy * gy - yy * gx) / det;
    const dy = (xy * gx - xx * gy) / det;
    x += dx;
    y += dy;
    if (Math.hypot(x, y) > 80) return null;
    if (Math.abs(dx) + Math.abs(dy) < 1e-3) return { xMm: x, yMm: y };
  }
  return null;
}

/** The thinnest of a polar grid inside the outline, taken down to a tenth of a millimetre along its ray. */
function scanned(lens: LensToMake, field: ThicknessField): Demand {
  const { radiiMm } = lens.outline;
  const n = radiiMm.length;
  const { cos, sin } = directions(n);
  const at = (i: number, share: number): PointMm => {
    const r = (radiiMm[i] as number) * share;
    return { xMm: r * (cos[i] as number), yMm: r * (sin[i] as number) };
  };
  const riseAt = (i: number, share: number) => {
    const r = (radiiMm[i] as number) * share;
    return rise(
      field,
      r * (cos[i] as number) - lens.reference.xMm,
      r * (sin[i] as number) - lens.reference.yMm,
    );
  };
  let least = riseAt(0, 0);
  let ray = 0;
  let share = 0;
  const rays = Math.max(1, Math.floor(n / 24));
  for (let i = 0; i < n; i += rays) {
    for (let k = 1; k < 8; k++) {
      const d = riseAt(i, k / 8);
      if (d < least) {
        least = d;
        ray = i;
        share = k / 8;
      }
    }
  }
  for (let half = 1 / 16; half > 1 / 600; half /= 2) {
    for (const next of [share - half, share + half]) {
      const d = next > 0 && next < 1 ? riseAt(ray, next) : Number.POSITIVE_INFINITY;
      if (d < least) {
        least = d;
        share = next;
      }
    }
  }
  const { centreMm, edgeMm } = lens.limits;
  const limitMm = Math.min(centreMm, edgeMm);
  return { by: centreMm <= edgeMm ? 'centre' : 'edge', limitMm, needMm: limitMm - least, at: at(ray, share) };
}
