/**
 * Exact sags of the two surfaces of a lens (types.ts): a conic of revolution in front, a tyre toroid tilted about
 * its vertex at the back. No parabola stands in for a circle anywhere. A sag is NaN where the surface does not
 * reach. `prepare` turns the readable records into plain numbers once, for the loops that ask thousands of points.
 */
import { toRadians } from './angle.ts';
import type { BackSurface, FrontSurface } from './types.ts';
import { fromAxes, leastTurn, unit } from './vector3.ts';

/** Numbers of a back surface, ready for `preparedBackSag`. Curvatures in 1/mm. */
export interface PreparedBack {
  readonly generating: number;
  readonly revolved: number;
  /** Signed radii, mm, where both are short enough for the quick form; else `quick` is false. */
  readonly generatingRadius: number;
  readonly revolvedRadius: number;
  readonly quick: boolean;
  readonly cos: number;
  readonly sin: number;
  /** Null without tilt; else the local axes u, v, w as x, y, z components. */
  readonly axes: Float64Array | null;
  /** A Newton step of this, mm, leaves less than 1e-7 mm: what is left goes with (slope x step) squared. */
  readonly lastStep: number;
}

/** Sag of a front surface at `r2Mm2`, the square of the distance from its vertex; towards the eye, mm. */
export function frontSag(front: FrontSurface, r2Mm2: number): number {
  return conicSag(1 / front.radiusMm, front.conic, r2Mm2);
}

/** z = c r2 / (1 + sqrt(1 - (1 + k) c2 r2)): exact, and without cancellation for flat surfaces. */
export function conicSag(curvature: number, conic: number, r2: number): number {
  return (curvature * r2) / (1 + Math.sqrt(1 - (1 + conic) * curvature * curvature * r2));
}

/** Makes a back surface ready for many points. */
export function prepareBack(back: BackSurface): PreparedBack {
  const angle = toRadians(back.generatingMeridianDeg);
  const longest = Math.max(Math.abs(back.generatingRadiusMm), Math.abs(back.revolvedRadiusMm));
  return {
    generating: 1 / back.generatingRadiusMm,
    revolved: 1 / back.revolvedRadiusMm,
    generatingRadius: back.generatingRadiusMm,
    revolvedRadius: back.revolvedRadiusMm,
    quick: longest < QUICK_MM,
    cos: Math.cos(angle),
    sin: Math.sin(angle),
    axes: tiltedAxes(back, Math.cos(angle), Math.sin(angle)),
    lastStep: Math.min(0.1, 1e-3 / Math.hypot(back.tiltSlopeX, back.tiltSlopeY)),
  };
}

/**
 * The axes after the shortest turn that brings the vertex normal (0, 0, 1) onto the normal of the tilt plane
 * (-slopeX, -slopeY, 1); null without tilt.
 */
function tiltedAxes(back: BackSurface, c: number, s: number): Float64Array | null {
  if (back.tiltSlopeX === 0 && back.tiltSlopeY === 0) return null;
  const turned = leastTurn(unit([-back.tiltSlopeX, -back.tiltSlopeY, 1]));
  return Float64Array.from([...fromAxes(turned, [c, s, 0]), ...fromAxes(turned, [-s, c, 0]), ...turned.z]);
}

/** Up to this radius r - sqrt(r2 - y2) loses less than 1e-9 mm to rounding, and needs no division. */
const QUICK_MM = 1e5;

/** Sag of the untilted toroid at local u (along the generating arc) and v (across), mm. */
function toroidSag(b: PreparedBack, u: number, v: number): number {
  if (b.quick) {
    const g = b.generatingRadius;
    const r = b.revolvedRadius;
    const rootU = Math.sqrt(g * g - u * u);
    const arm = r - g + (g > 0 ? rootU : -rootU);
    const rootV = Math.sqrt(arm * arm - v * v);
    return r - (r > 0 ? rootV : -rootV);
  }
  const cu = b.generating * u;
  const arc = (cu * u) / (1 + Math.sqrt(1 - cu * cu));
  // The arc's point turns about the axis at the distance revolvedRadius - arc.
  const curvature = b.revolved / (1 - b.revolved * arc);
  const cv = curvature * v;
  return arc + (cv * v) / (1 + Math.sqrt(1 - cv * cv));
}

/** Sag of a prepared back surface at a point from its vertex, mm towards the eye. */
export function preparedBackSag(b: PreparedBack, xMm: number, yMm: number): number {
  if (b.axes) return tiltedSag(b, b.axes, xMm, yMm);
  return toroidSag(b, b.cos * xMm + b.sin * yMm, b.cos * yMm - b.sin * xMm);
}

/** Sag of a back surface at a point from its vertex, mm towards the eye: `zBack = centre thickness + sag`. */
export function backSag(back: BackSurface, xMm: number, yMm: number): number {
  return preparedBackSag(prepareBack(back), xMm, yMm);
}

/** Where the line parallel to z through (x, y) meets the tilted toroid: Newton's method in the toroid's own axes. */
function tiltedSag(b: PreparedBack, axes: Float64Array, x: number, y: number): number {
  const uz = axes[2] as number;
  const vz = axes[5] as number;
  const wz = axes[8] as number;
  const u0 = (axes[0] as number) * x + (axes[1] as number) * y;
  const v0 = (axes[3] as number) * x + (axes[4] as number) * y;
  const w0 = (axes[6] as number) * x + (axes[7] as number) * y;
  // A sphere's sag to the fourth order, near enough for a single step at most points.
  const low = (b.generating * u0 * u0 + b.revolved * v0 * v0) / 2;
  let z = low + ((b.generating + b.revolved) / 4) * low * low - w0;
  if (b.quick) {
    const g = b.generatingRadius;
    const r = b.revolvedRadius;
    const signG = g > 0 ? 1 : -1;
    const signR = r > 0 ? 1 : -1;
    for (let pass = 0; pass < 12; pass++) {
      const u = u0 + uz * z;
      const v = v0 + vz * z;
      const rootU = Math.sqrt(g * g - u * u);
      const arm = r - g + signG * rootU;
      const rootV = Math.sqrt(arm * arm - v * v);
      // Both slopes over one divisor: a division costs as much as the rest of a step.
      const roots = rootU * rootV;
      const slope = wz * roots - signR * (signG * uz * arm * u + vz * v * rootU);
      const step = ((w0 + wz * z - r + signR * rootV) * roots) / slope;
      z -= step;
      if (step < b.lastStep && step > -b.lastStep) return z;
    }
    return Number.NaN;
  }
  for (let pass = 0; pass < 12; pass++) {
    const u = u0 + uz * z;
    const v = v0 + vz * z;
    const cu = b.generating * u;
    const rootU = Math.sqrt(1 - cu * cu);
    const arc = (cu * u) / (1 + rootU);
    const cv = (b.revolved / (1 - b.revolved * arc)) * v;
    const rootV = Math.sqrt(1 - cv * cv);
    const off = w0 + wz * z - arc - (cv * v) / (1 + rootV);
    const step = off / (wz - (uz * cu) / (rootU * rootV) - (vz * cv) / rootV);
    z -= step;
    if (step < b.lastStep && step > -b.lastStep) return z;
  }
  return Number.NaN;
}
