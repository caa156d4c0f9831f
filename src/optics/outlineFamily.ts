/**
 * Families of lens shapes, for frames whose outline was not traced: a shape of the family with the given A, B and
 * ED. Each family is a curve |X|^p + |Y|^p = 1 (a round one at p = 2, square corners as p grows) bent by a warp of
 * its own, or a hexagon with its corners rounded, and then stretched to the box. One number, the squareness from
 * 0 to 1, sets the corners; ED grows with it, so it is solved for ED. An estimate, not a tracing. Shapes are of
 * the right lens seen from the front: nasal at +X.
 */
import { box } from './outline.ts';
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

const POINTS = 1440;

/** The family's curve at a squareness from 0 to 1, counter-clockwise, not yet scaled to the box. */
function curve(family: OutlineFamily, squareness: number): { xMm: Float64Array; yMm: Float64Array } {
  const xMm = new Float64Array(POINTS);
  const yMm = new Float64Array(POINTS);
  const { least, most, warp } = FAMILY[family];
  const p = least * (most / least) ** squareness;
  const strength = 0.5 + 0.5 * Math.min(1, 4 * squareness);
  // Half the length of the hexagon's flat top is this share of half its width.
  const slant = 1 - (0.5 + 0.45 * squareness);
  for (let i = 0; i < POINTS; i++) {
    const c = Math.cos((2 * Math.PI * i) / POINTS);
    const s = Math.sin((2 * Math.PI * i) / POINTS);
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

/** The curve stretched to a box of A by B and sampled from the boxed centre. */
function stretched(raw: { xMm: Float64Array; yMm: Float64Array }, aMm: number, bMm: number): Outline {
  const loX = raw.xMm.reduce((a, b) => Math.min(a, b));
  const hiX = raw.xMm.reduce((a, b) => Math.max(a, b));
  const loY = raw.yMm.reduce((a, b) => Math.min(a, b));
  const hiY = raw.yMm.reduce((a, b) => Math.max(a, b));
  let scaleX = aMm / (hiX - loX);
  let scaleY = bMm / (hiY - loY);
  let midX = (loX + hiX) / 2;
  let midY = (loY + hiY) / 2;
  let outline: Outline = { radiiMm: [] };
  // 360 radii can miss the very extreme of a tight corner: the later passes take that up.
  for (let pass = 0; pass < 4; pass++) {
    const xMm = raw.xMm.map((x) => (x - midX) * scaleX);
    const yMm = raw.yMm.map((y) => (y - midY) * scaleY);
    outline = outlineFromPoints({ xMm, yMm }, 360) ?? outline;
    const b = box(outline);
    midX += (b.minX + b.maxX) / 2 / scaleX;
    midY += (b.minY + b.maxY) / 2 / scaleY;
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
  const at = (squareness: number) => stretched(curve(family, squareness), aMm, bMm);
  let low = 0;
  let high = 1;
  const leastEdMm = box(at(low)).edMm;
  const mostEdMm = box(at(high)).edMm;
  if (edMm < leastEdMm - 0.01) return { ok: false, reason: 'ed-too-small', leastEdMm, mostEdMm };
  if (edMm > mostEdMm + 0.01) return { ok: false, reason: 'ed-too-large', leastEdMm, mostEdMm };
  for (let pass = 0; pass < 40 && high - low > 1e-7; pass++) {
    const middle = (low + high) / 2;
    if (box(at(middle)).edMm < edMm) low = middle;
    else high = middle;
  }
  return { ok: true, outline: at((low + high) / 2) };
}
