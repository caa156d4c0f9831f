/**
 * Volume of a cut lens by quadrature in polar coordinates about the boxed centre: along a ray a Gauss-Lobatto rule
 * with weight r (centre, two nodes, edge; exact to the fifth degree), over the rays the mean. The edge values are
 * those of the thickness pass, so only two more points a ray are asked, on every tenth ray of 360.
 */
import { directions } from './outline.ts';
import { rise, type ThicknessField } from './thicknessField.ts';
import type { PointMm } from './types.ts';

const INNER = (8 - Math.sqrt(8)) / 14;
const OUTER = (8 + Math.sqrt(8)) / 14;
const WEIGHT_INNER = (1 / 20 - OUTER / 12) / (INNER * (1 - INNER) * (INNER - OUTER));
const WEIGHT_OUTER = (1 / 20 - INNER / 12) / (OUTER * (1 - OUTER) * (OUTER - INNER));
const WEIGHT_EDGE = 1 / 15;
const WEIGHT_CENTRE = 1 / 120;

/** Rays that are asked inside; the area of all rays takes up what a corner between them would add. */
const RAYS = 36;

/** The largest step that divides `n` and leaves at least `RAYS` rays. */
function rayStep(n: number): number {
  for (let step = Math.floor(n / RAYS); step > 1; step--) if (n % step === 0) return step;
  return 1;
}

/**
 * Mean of the rise over the face of the lens, mm; the volume is the area times (centre thickness + mean rise).
 * `edge` holds the rise at each radius.
 */
export function meanRise(
  field: ThicknessField,
  radiiMm: readonly number[],
  reference: PointMm,
  edge: ArrayLike<number>,
): number {
  const n = radiiMm.length;
  const step = rayStep(n);
  const { cos, sin } = directions(n);
  const ox = reference.xMm;
  const oy = reference.yMm;
  const centre = WEIGHT_CENTRE * rise(field, -ox, -oy);
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < n; i += step) {
    const r = radiiMm[i] as number;
    const x = r * (cos[i] as number);
    const y = r * (sin[i] as number);
    const along =
      centre +
      WEIGHT_INNER * rise(field, INNER * x - ox, INNER * y - oy) +
      WEIGHT_OUTER * rise(field, OUTER * x - ox, OUTER * y - oy) +
      WEIGHT_EDGE * (edge[i] as number);
    sum += r * r * along;
    squares += r * r;
  }
  return (2 * sum) / squares;
}
