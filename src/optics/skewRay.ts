/**
 * Exact refraction of a skew ray, and of the wavefront around it, at a surface anywhere in space.
 *
 * The wavefront is carried by its curvature matrix (generalised ray tracing: Kneisly 1964, from memory), which is
 * the limit of tracing neighbouring rays and needs one ray instead of a bundle. Along surface tangents s, t:
 * n' s·W't = n s·Wt + G s·(dN)t, with n'd' = n d + G N.
 */
import type { SagJet, SagShape } from './surfaceJet.ts';
import { type Axes, along, dot, fromAxes, toAxes, unit, type Vec3 } from './vector3.ts';

/** A surface in place: its shape, where its vertex is (mm), and how it is turned. */
export interface PlacedSurface {
  readonly shape: SagShape;
  readonly vertex: Vec3;
  readonly axes: Axes;
}

/** Where a ray meets a surface: the point (mm), and the surface's sag jet there in its own frame. */
export interface RayHit {
  readonly point: Vec3;
  readonly jet: SagJet;
}

/** A wavefront across a ray: curvature matrix (1/mm, positive when spreading) in two directions across the ray. */
export interface Wavefront {
  readonly a: Vec3;
  readonly b: Vec3;
  readonly aa: number;
  readonly ab: number;
  readonly bb: number;
}

/** Where the line through `from` (mm) along `direction` meets the surface near its vertex; null where it does not. */
export function meet(surface: PlacedSurface, from: Vec3, direction: Vec3): RayHit | null {
  const start = toAxes(surface.axes, along(from, -1, surface.vertex));
  const d = toAxes(surface.axes, direction);
  if (Math.abs(d[2]) < 1e-6) return null;
  let s = -start[2] / d[2];
  for (let turn = 0; turn < 30; turn++) {
    const local = along(start, s, d);
    const jet = surface.shape(local[0], local[1]);
    if (jet === null) return null;
    const miss = local[2] - jet.z;
    if (Math.abs(miss) < 1e-11) return { point: along(from, s, direction), jet };
    s -= miss / (d[2] - jet.zx * d[0] - jet.zy * d[1]);
  }
  return null;
}

/** Unit normal of a surface at a hit, on the side of the surface's own +z. */
export const normalAt = (surface: PlacedSurface, { jet }: RayHit): Vec3 =>
  fromAxes(surface.axes, unit([-jet.zx, -jet.zy, 1]));

/** Direction after refraction from index n to index m at a surface normal; null at total reflection. Unit vectors. */
export function refract(direction: Vec3, normal: Vec3, n: number, m: number): Vec3 | null {
  const ratio = n / m;
  const cosIn = dot(direction, normal);
  const under = 1 - ratio * ratio * (1 - cosIn * cosIn);
  if (under <= 0) return null;
  const cosOut = Math.sign(cosIn) * Math.sqrt(under);
  const out = along([0, 0, 0], ratio, direction);
  return along(out, cosOut - ratio * cosIn, normal);
}

/** One refraction: the surface, the hit, the ray before and after, and the indices before and after. */
export interface Refraction {
  readonly surface: PlacedSurface;
  readonly hit: RayHit;
  readonly before: Vec3;
  readonly after: Vec3;
  readonly n: number;
  readonly m: number;
}

/**
 * The wavefront just behind a refraction, in the directions a and b of `across`, which must stand at right angles to
 * the ray behind. `front` is the wavefront before it; null for a plane one.
 */
export function refractWavefront(
  front: Wavefront | null,
  { surface, hit, before, after, n, m }: Refraction,
  across: { readonly a: Vec3; readonly b: Vec3 },
): Wavefront {
  const { jet } = hit;
  const normal = normalAt(surface, hit);
  const gain = m * dot(after, normal) - n * dot(before, normal);
  const k = -gain / Math.sqrt(1 + jet.zx * jet.zx + jet.zy * jet.zy);
  const s = fromAxes(surface.axes, [1, 0, jet.zx]);
  const t = fromAxes(surface.axes, [0, 1, jet.zy]);
  const ss = (n * form(front, s, s) + k * jet.zxx) / m;
  const st = (n * form(front, s, t) + k * jet.zxy) / m;
  const tt = (n * form(front, t, t) + k * jet.zyy) / m;
  // Back from the tangents to the directions a, b: W' = M^-T B M^-1 with the columns of M the tangents seen along the ray.
  const { a, b } = across;
  const [sa, sb, ta, tb] = [dot(s, a), dot(s, b), dot(t, a), dot(t, b)];
  const det = sa * tb - sb * ta;
  return {
    a,
    b,
    aa: (tb * tb * ss - 2 * tb * sb * st + sb * sb * tt) / (det * det),
    ab: (-tb * ta * ss + (tb * sa + ta * sb) * st - sb * sa * tt) / (det * det),
    bb: (ta * ta * ss - 2 * ta * sa * st + sa * sa * tt) / (det * det),
  };
}

function form(front: Wavefront | null, u: Vec3, v: Vec3): number {
  if (front === null) return 0;
  const [ua, ub, va, vb] = [dot(u, front.a), dot(u, front.b), dot(v, front.a), dot(v, front.b)];
  return ua * va * front.aa + (ua * vb + ub * va) * front.ab + ub * vb * front.bb;
}

/** The wavefront after a further `mm` along its ray (negative: back towards where it came from). */
export function travel(front: Wavefront, mm: number): Wavefront {
  const det = front.aa * front.bb - front.ab * front.ab;
  const grow = 1 + mm * (front.aa + front.bb) + mm * mm * det;
  return {
    ...front,
    aa: (front.aa + mm * det) / grow,
    ab: front.ab / grow,
    bb: (front.bb + mm * det) / grow,
  };
}
