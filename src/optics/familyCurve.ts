/**
 * The curves of the shape families, before they are stretched to a box: |X|^p + |Y|^p = 1 (a round one at p = 2,
 * square corners as p grows) bent by a warp of the family's own, or a hexagon with its corners rounded. One number,
 * the squareness from 0 to 1, sets the corners. Right lens seen from the front: nasal at +X.
 */
import { directions, type OutlinePoints } from './outline.ts';

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

/** The family's curve at a squareness from 0 to 1, counter-clockwise, not yet scaled to the box; points by fours. */
export function familyCurve(family: OutlineFamily, squareness: number, points: number): OutlinePoints {
  const xMm = new Float64Array(points);
  const yMm = new Float64Array(points);
  const { least, most, warp } = FAMILY[family];
  const p = least * (most / least) ** squareness;
  const strength = 0.5 + 0.5 * Math.min(1, 4 * squareness);
  // Half the length of the hexagon's flat top is this share of half its width.
  const slant = 1 - (0.5 + 0.45 * squareness);
  const { cos, sin } = directions(points);
  const radii = quarterRadii(family === 'hexagon' ? slant : null, p, points);
  for (let i = 0; i < points; i++) {
    const r = radii[toQuarter(i, points)] as number;
    const [x, y] = warp(r * (cos[i] as number), r * (sin[i] as number), strength);
    xMm[i] = x;
    yMm[i] = y;
  }
  return { xMm, yMm };
}

/** Radii in the first quarter, its ends included: before it is bent, a curve is the same in all four. */
function quarterRadii(slant: number | null, p: number, points: number): Float64Array {
  const { cos, sin } = directions(points);
  const radii = new Float64Array(Math.floor(points / 4) + 1);
  for (let i = 0; i < radii.length; i++) {
    const c = cos[i] as number;
    const s = sin[i] as number;
    const sides =
      slant === null
        ? Math.abs(c) ** p + Math.abs(s) ** p
        : Math.abs(s) ** p + Math.abs(c + slant * s) ** p + Math.abs(c - slant * s) ** p;
    radii[i] = sides ** (-1 / p);
  }
  return radii;
}

/** The direction of the first quarter that mirrors the i-th of `points`. */
function toQuarter(i: number, points: number): number {
  const half = points / 2;
  const inHalf = i > half ? points - i : i;
  return inHalf > half / 2 ? half - inHalf : inHalf;
}
