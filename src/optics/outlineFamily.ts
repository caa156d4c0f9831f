/**
 * Families of lens shapes, for frames whose outline was not traced: a shape of the family with the given A, B and
 * ED. Each family is a curve |X|^p + |Y|^p = 1 (a round one at p = 2, square corners as p grows) bent by a warp of
 * its own, or a hexagon with its corners rounded, and then stretched to the box. One number, the squareness from
 * 0 to 1, sets the corners; ED grows with it, so it is solved for ED. An estimate, not a tracing. Shapes are of
 * the right lens seen from the front: nasal at +X.
 */
import { box, directions, type OutlinePoints } from './outline.ts';
import { outlineFromPoints } from './outlineShape.ts';
import type { Outline } from './types.ts';

/** The families, in the order in which they are offered. */
export const OUTLINE_FAMILIES = [
  'round',
  'oval',
  'panto',
  'rectangle',
  'square',
  'upswept',
  'teardrop',
  'hexagon',
] as const;

/** Name of a family of lens shapes. */
export type OutlineFamily = (typeof OUTLINE_FAMILIES)[number];

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

/** Bends the plain curve; `k` from 0.5 (roundest) to 1 is the strength of the bend. */
type Warp = (x: number, y: number, k: number) => readonly [number, number];

const plain: Warp = (x, y) => [x, y];

/** Exponent of the roundest and of the squarest shape of a family, and its warp. */
const FAMILY: Record<OutlineFamily, { readonly least: number; readonly most: number; readonly warp: Warp }> =
  {
    round: { least: 2, most: 5, warp: plain },
    // The nasal end is the slimmer one.
    oval: { least: 1.9, most: 5, warp: (x, y, k) => [x, y * (1 - 0.16 * k * x)] },
    // Wider above than below, flat on top.
    panto: {
      least: 2,
      most: 7,
      warp: (x, y, k) => [x * (1 + 0.17 * k * y), y > 0 ? y * (1 - 0.22 * k * y) : y],
    },
    rectangle: { least: 2.3, most: 16, warp: (x, y, k) => [x, y * (1 - 0.03 * k * x)] },
    // Sides lean in towards the cheek.
    square: { least: 2.3, most: 16, warp: (x, y, k) => [x * (1 + 0.09 * k * y), y] },
    // The upper temporal corner is lifted, the nasal side hangs lower.
    upswept: {
      least: 2,
      most: 9,
      warp: (x, y, k) => [x * (1 + 0.1 * k * y), y - 0.2 * k * x + 0.06 * k * (1 - x) * (1 + y)],
    },
    // Drops towards the cheek on the temporal side; the nasal side is cut away below.
    teardrop: {
      least: 2,
      most: 7,
      warp: (x, y, k) => [
        x - k * (0.12 * (1 - y) * (1 + 0.5 * x) - 0.06 * y),
        y > 0 ? y * (1 - 0.22 * k) : y * (1 - 0.16 * k * x),
      ],
    },
    // Its own curve: here only the rounding of the corners.
    hexagon: { least: 12, most: 26, warp: plain },
  };

/** Points of a curve that is measured, and of one that is sampled. */
const ROUGH = 360;
const FINE = 1440;

/** The family's curve at a squareness from 0 to 1, counter-clockwise, not yet scaled to the box. */
function curve(family: OutlineFamily, squareness: number, points: number): OutlinePoints {
  const xMm = new Float64Array(points);
  const yMm = new Float64Array(points);
  const { least, most, warp } = FAMILY[family];
  const p = least * (most / least) ** squareness;
  const strength = 0.5 + 0.5 * Math.min(1, 4 * squareness);
  // Half the length of the hexagon's flat top is this share of half its width.
  const slant = 1 - (0.5 + 0.45 * squareness);
  const { cos, sin } = directions(points);
  for (let i = 0; i < points; i++) {
    const c = cos[i] as number;
    const s = sin[i] as number;
    const sides =
      family === 'hexagon'
        ? Math.abs(s) ** p + Math.abs(c + slant * s) ** p + Math.abs(c - slant * s) ** p
        : Math.abs(c) ** p + Math.abs(s) ** p;
    const r = sides ** (-1 / p);
    const [x, y] = warp(r * c, r * s, strength);
    xMm[i] = x;
    yMm[i] = y;
  }
  return { xMm, yMm };
}

const least = (list: Float64Array) => list.reduce((a, b) => Math.min(a, b));
const most = (list: Float64Array) => list.reduce((a, b) => Math.max(a, b));

/** How a curve is stretched to a box of A by B. */
function stretch({ xMm, yMm }: OutlinePoints, aMm: number, bMm: number) {
  const [loX, hiX, loY, hiY] = [least(xMm), most(xMm), least(yMm), most(yMm)];
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
  let farthest = 0;
  raw.xMm.forEach((x, i) => {
    const r = Math.hypot((x - midX) * scaleX, ((raw.yMm[i] as number) - midY) * scaleY);
    farthest = Math.max(farthest, r);
  });
  return 2 * farthest;
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
  const rough = (squareness: number) => roughEdMm(curve(family, squareness, ROUGH), aMm, bMm);
  const at = (squareness: number) => sampled(curve(family, squareness, FINE), aMm, bMm);
  // Only near an end of the range does it take the sampled shape to tell whether the ED is reached.
  if (edMm < rough(0) + 0.1 || edMm > rough(1) - 0.1) {
    const leastEdMm = box(at(0)).edMm;
    const mostEdMm = box(at(1)).edMm;
    if (edMm < leastEdMm - 0.005) return { ok: false, reason: 'ed-too-small', leastEdMm, mostEdMm };
    if (edMm > mostEdMm + 0.005) return { ok: false, reason: 'ed-too-large', leastEdMm, mostEdMm };
  }
  // The rough measure is off by the same hair at neighbouring shapes, so it is solved for a corrected aim.
  let aimMm = edMm;
  let outline = at(solve(rough, aimMm));
  for (let pass = 0; pass < 4 && Math.abs(box(outline).edMm - edMm) > 1e-3; pass++) {
    aimMm += edMm - box(outline).edMm;
    outline = at(solve(rough, aimMm));
  }
  return { ok: true, outline };
}

/** The squareness from 0 to 1 at which a rising measure reaches the aim, or the nearer end. */
function solve(measure: (squareness: number) => number, aim: number): number {
  let low = 0;
  let high = 1;
  for (let pass = 0; pass < 24; pass++) {
    const middle = (low + high) / 2;
    if (measure(middle) < aim) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
