/**
 * Exact sag of the two surfaces with its first and second derivatives, as a ray trace needs them.
 *
 * Written in curvatures, so that flat, hollow and bulging surfaces are one formula without cancellation.
 */
import { toRadians } from './angle.ts';
import type { BackSurface, FrontSurface } from './types.ts';

/** Sag (mm) at a point and its derivatives in x and y (dimensionless; per mm). */
export interface SagJet {
  readonly z: number;
  readonly zx: number;
  readonly zy: number;
  readonly zxx: number;
  readonly zxy: number;
  readonly zyy: number;
}

/** Sag jet at x, y (mm, from the vertex); null beyond the surface's own extent. */
export type SagShape = (xMm: number, yMm: number) => SagJet | null;

/** The front: a sphere or a conic of revolution. */
export function frontShape({ radiusMm, conic }: FrontSurface): SagShape {
  const c = 1 / radiusMm;
  const p = (1 + conic) * c * c;
  return (x, y) => {
    const under = 1 - p * (x * x + y * y);
    if (!(under > 0)) return null;
    const q = Math.sqrt(under);
    const bend = (c * p) / (q * q * q);
    return {
      z: (c * (x * x + y * y)) / (1 + q),
      zx: (c * x) / q,
      zy: (c * y) / q,
      zxx: c / q + bend * x * x,
      zxy: bend * x * y,
      zyy: c / q + bend * y * y,
    };
  };
}

/**
 * The back without its tilt: a tyre. With u along the generating arc of curvature g and v across it, the arc
 * w(u) is revolved at curvature r: sag = (1 - sqrt((1 - r w)² - r² v²)) / r.
 */
export function backShape(surface: BackSurface): SagShape {
  const g = 1 / surface.generatingRadiusMm;
  const r = 1 / surface.revolvedRadiusMm;
  const cos = Math.cos(toRadians(surface.generatingMeridianDeg));
  const sin = Math.sin(toRadians(surface.generatingMeridianDeg));
  return (x, y) => {
    const jet = tyreJet(g, r, x * cos + y * sin, y * cos - x * sin);
    if (jet === null) return null;
    const { z, zx: zu, zy: zv, zxx: zuu, zxy: zuv, zyy: zvv } = jet;
    return {
      z,
      zx: zu * cos - zv * sin,
      zy: zu * sin + zv * cos,
      zxx: zuu * cos * cos - 2 * zuv * cos * sin + zvv * sin * sin,
      zxy: (zuu - zvv) * cos * sin + zuv * (cos * cos - sin * sin),
      zyy: zuu * sin * sin + 2 * zuv * cos * sin + zvv * cos * cos,
    };
  };
}

function tyreJet(g: number, r: number, u: number, v: number): SagJet | null {
  const underArc = 1 - g * g * u * u;
  if (!(underArc > 0)) return null;
  const arc = Math.sqrt(underArc);
  const w = (g * u * u) / (1 + arc);
  const slope = (g * u) / arc;
  const curve = g / (arc * arc * arc);
  const e = 1 - r * w;
  const underTurn = e * e - r * r * v * v;
  if (!(underTurn > 0 && e > 0)) return null;
  const q = Math.sqrt(underTurn);
  const q3 = q * q * q;
  return {
    z: (2 * w - r * w * w + r * v * v) / (1 + q),
    zx: (e * slope) / q,
    zy: (r * v) / q,
    zxx: (e * curve - r * slope * slope) / q + (r * e * e * slope * slope) / q3,
    zxy: (r * r * v * e * slope) / q3,
    zyy: r / q + (r * r * r * v * v) / q3,
  };
}
