/**
 * A second ray trace, for the tests alone: implicit surfaces, normals by finite differences, Snell's law by angles,
 * positions by explicit rotation matrices. It shares nothing with src/optics but the definitions in types.ts.
 */
import { multiply, rotationMatrix } from 'mathjs';
import type { BackSurface, Eye, FrontSurface } from '../../src/optics/types.ts';

export type V = [number, number, number];
export interface Ray {
  readonly at: V;
  readonly towards: V;
}
export interface BareLens {
  readonly front: FrontSurface;
  readonly back: BackSurface;
  readonly centreThicknessMm: number;
  readonly index: number;
}
export interface Wear {
  readonly eye: Eye;
  readonly pantoscopicTiltDeg: number;
  readonly faceFormDeg: number;
}

type Implicit = (p: V) => number;

const rad = (deg: number) => (deg * Math.PI) / 180;
const add = (a: V, k: number, b: V): V => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
const dot = (a: V, b: V) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const norm = (a: V): V => add([0, 0, 0], 1 / Math.sqrt(dot(a, a)), a);
const rotation = (deg: number, axis: V) => rotationMatrix(rad(deg), axis) as unknown as number[][];
const turn = (m: number[][], v: V) => multiply(m, v) as unknown as V;
const transposed = (m: number[][]) =>
  [0, 1, 2].map((i) => [0, 1, 2].map((j) => (m[j] as number[])[i] as number));

/** r² - 2 R z + (1 + k) z² = 0, positive outside the glass side of a convex front. */
function conic({ radiusMm, conic: k }: FrontSurface): Implicit {
  return ([x, y, z]) => (x * x + y * y + (1 + k) * z * z) / (2 * radiusMm) - z;
}

/** The arc's circle turned about the axis at the distance of the revolved radius; both radii finite. */
function tyre(back: BackSurface): Implicit {
  const r = back.generatingRadiusMm;
  const R = back.revolvedRadiusMm;
  const side = Math.sign(R);
  const c = Math.cos(rad(back.generatingMeridianDeg));
  const s = Math.sin(rad(back.generatingMeridianDeg));
  return ([x, y, z]) => {
    const u = c * x + s * y;
    const v = c * y - s * x;
    const fromAxis = Math.hypot(v, z - R) - side * (R - r);
    return (fromAxis ** 2 + u * u - r * r) / (2 * r);
  };
}

/** The two surfaces in the wearer's frame, back vertex at the origin. */
export function place(lens: BareLens, wear: Wear): { front: Implicit; back: Implicit; index: number } {
  const side = wear.eye === 'right' ? 1 : -1;
  // Turning about +y by a positive angle takes +z to +x and +x to -z: the temporal edge of a right lens to the eye.
  const bend = rotation(side * wear.faceFormDeg, [0, 1, 0]);
  // Turning about +x by a negative angle takes +z to +y and +y to -z: the lower edge to the eye.
  const tilt = rotation(-wear.pantoscopicTiltDeg, [1, 0, 0]);
  const toLens = transposed(multiply(tilt, bend) as number[][]);
  const front = conic(lens.front);
  const back = tyre(lens.back);
  const { tiltSlopeX: p, tiltSlopeY: q } = lens.back;
  const slope = Math.hypot(p, q);
  // The prism's tilt turns about the direction in the plane that stays level.
  const toBack =
    slope === 0 ? null : transposed(rotation((Math.atan(slope) * 180) / Math.PI, [q / slope, -p / slope, 0]));
  return {
    front: (x) => front(add(turn(toLens, x), 1, [0, 0, lens.centreThicknessMm])),
    back: (x) => back(toBack === null ? turn(toLens, x) : turn(toBack, turn(toLens, x))),
    index: lens.index,
  };
}

/** First crossing along the ray from near its point, by the secant method. */
function cross(f: Implicit, { at, towards }: Ray): V {
  let a = 0;
  let b = 0.1;
  let fa = f(at);
  let fb = f(add(at, b, towards));
  for (let i = 0; i < 60 && Math.abs(fb) > 1e-13 && fb !== fa; i++) {
    const next = b - (fb * (b - a)) / (fb - fa);
    [a, fa, b] = [b, fb, next];
    fb = f(add(at, b, towards));
  }
  return add(at, b, towards);
}

function normal(f: Implicit, p: V): V {
  const h = 1e-4;
  const axis = (i: 0 | 1 | 2): V => [i === 0 ? h : 0, i === 1 ? h : 0, i === 2 ? h : 0];
  const d = ([0, 1, 2] as const).map((i) => f(add(p, 1, axis(i))) - f(add(p, -1, axis(i))));
  return norm(d as V);
}

/** Snell's law in the plane of ray and normal, by sines of angles. */
function bend(direction: V, m: V, from: number, to: number): V {
  const n: V = dot(direction, m) < 0 ? [-m[0], -m[1], -m[2]] : m;
  const across = add(direction, -dot(direction, n), n);
  const size = Math.sqrt(dot(across, across));
  if (size < 1e-15) return direction;
  const out = Math.asin((from / to) * size);
  return add(add([0, 0, 0], Math.cos(out), n), Math.sin(out) / size, across);
}

/** Light onwards through the lens: from a point before it, to the ray that leaves the back. */
function onwards(lens: ReturnType<typeof place>, ray: Ray): Ray {
  const first = cross(lens.front, ray);
  const inside = bend(ray.towards, normal(lens.front, first), 1, lens.index);
  const last = cross(lens.back, { at: first, towards: inside });
  return { at: last, towards: bend(inside, normal(lens.back, last), lens.index, 1) };
}

/** Light traced back from the eye: the ray before the lens, as it travels towards it. */
export function backwards(
  lens: ReturnType<typeof place>,
  through: V,
  towards: V,
): Ray & { readonly atBack: V } {
  const reverse: V = [-towards[0], -towards[1], -towards[2]];
  const atBack = cross(lens.back, { at: through, towards: reverse });
  const inside = bend(reverse, normal(lens.back, atBack), 1, lens.index);
  const first = cross(lens.front, { at: atBack, towards: inside });
  const out = bend(inside, normal(lens.front, first), lens.index, 1);
  return { at: first, towards: [-out[0], -out[1], -out[2]], atBack };
}

/**
 * Power matrix (D) along a ray to the eye by neighbouring parallel rays, at `at` on the ray, in the directions a and b
 * across it: direction changes over places, by central differences.
 */
export function powerByNeighbours(
  lens: ReturnType<typeof place>,
  chief: Ray,
  eyeRay: Ray,
  a: V,
  b: V,
): { xx: number; xy: number; yx: number; yy: number } {
  const h = 0.02;
  const start = add(chief.at, -5, chief.towards);
  const aside = Math.abs(chief.towards[0]) < 0.5 ? ([1, 0, 0] as V) : ([0, 1, 0] as V);
  const e1 = norm(add(aside, -dot(aside, chief.towards), chief.towards));
  const t = chief.towards;
  const e2: V = [t[1] * e1[2] - t[2] * e1[1], t[2] * e1[0] - t[0] * e1[2], t[0] * e1[1] - t[1] * e1[0]];
  const shift = (e: V) => {
    const [plus, minus] = [h, -h].map((k) => {
      const out = onwards(lens, { at: add(start, k, e), towards: t });
      const gap = dot(add(eyeRay.at, -1, out.at), eyeRay.towards) / dot(out.towards, eyeRay.towards);
      const place = add(add(out.at, gap, out.towards), -1, eyeRay.at);
      return { place: [dot(place, a), dot(place, b)], lean: [dot(out.towards, a), dot(out.towards, b)] };
    }) as [Neighbour, Neighbour];
    const over = (key: keyof Neighbour, i: 0 | 1) => (plus[key][i] - minus[key][i]) / (2 * h);
    return { p: [over('place', 0), over('place', 1)], d: [over('lean', 0), over('lean', 1)] } as Difference;
  };
  const [one, two] = [shift(e1), shift(e2)];
  const det = one.p[0] * two.p[1] - one.p[1] * two.p[0];
  // lean = -F place for two displacements: F = -D P^-1.
  const row = (i: 0 | 1) => [
    (-1000 * (one.d[i] * two.p[1] - two.d[i] * one.p[1])) / det,
    (-1000 * (two.d[i] * one.p[0] - one.d[i] * two.p[0])) / det,
  ];
  const [x, y] = [row(0), row(1)] as [[number, number], [number, number]];
  return { xx: x[0], xy: x[1], yx: y[0], yy: y[1] };
}

interface Neighbour {
  readonly place: [number, number];
  readonly lean: [number, number];
}
interface Difference {
  readonly p: [number, number];
  readonly d: [number, number];
}
