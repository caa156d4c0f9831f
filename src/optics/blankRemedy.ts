/**
 * What would make a blank large enough: the range of PDs that it covers, and the largest frame of the same shape.
 * The needed diameter is a largest distance, so it is convex in the place of the lens: one interval serves.
 */
import { type BlankQuestion, blankNeeded } from './blank.ts';
import { box } from './outline.ts';
import type { Outline, PointMm } from './types.ts';

/** The reference points along the horizontal that a blank of `usedMm` covers, mm from the boxed centre, or null. */
export function coveredRange(
  question: BlankQuestion,
  usedMm: number,
): { readonly leastXMm: number; readonly mostXMm: number } | null {
  const excess = (xMm: number) =>
    blankNeeded({ ...question, reference: { xMm, yMm: question.reference.yMm } }).neededMm - usedMm;
  let low = -100;
  let high = 100;
  for (let pass = 0; pass < 80; pass++) {
    const a = low + (high - low) / 3;
    const b = high - (high - low) / 3;
    if (excess(a) < excess(b)) high = b;
    else low = a;
  }
  const best = (low + high) / 2;
  if (excess(best) > 0) return null;
  return { leastXMm: root(excess, -100, best), mostXMm: root(excess, 100, best) };
}

/** Between a place that is not covered and one that is: the last covered one. */
function root(excess: (x: number) => number, outside: number, inside: number): number {
  let out = outside;
  let within = inside;
  for (let pass = 0; pass < 60; pass++) {
    const middle = (out + within) / 2;
    if (excess(middle) > 0) out = middle;
    else within = middle;
  }
  return within;
}

/**
 * Monocular PDs which a blank of `usedMm` covers in this frame, mm, or null when none is. `nasal` is +1 for the
 * right lens and -1 for the left; `frameHalfMm` is (A + DBL)/2.
 */
export function coveredPds(
  question: BlankQuestion,
  usedMm: number,
  nasal: 1 | -1,
  frameHalfMm: number,
): { readonly leastMm: number; readonly mostMm: number } | null {
  const range = coveredRange(question, usedMm);
  if (!range) return null;
  const ends = [frameHalfMm - nasal * range.leastXMm, frameHalfMm - nasal * range.mostXMm];
  return { leastMm: Math.min(...ends), mostMm: Math.max(...ends) };
}

/**
 * The largest frame of the same shape and bridge which the blank covers for this wearer: its scale (1 or less) and
 * A, mm. The PD and the height from the lowest tangent stay the wearer's. Null when even half the size is too large.
 */
export function largestFrame(
  question: BlankQuestion,
  usedMm: number,
  wearer: { readonly monocularPdMm: number; readonly nasal: 1 | -1; readonly dblMm: number },
): { readonly scale: number; readonly aMm: number } | null {
  const { aMm, bMm } = box(question.outline);
  const heightMm = question.reference.yMm + bMm / 2;
  const scaled = (scale: number): { outline: Outline; reference: PointMm } => ({
    outline: { radiiMm: question.outline.radiiMm.map((r) => r * scale) },
    reference: {
      xMm: wearer.nasal * ((scale * aMm + wearer.dblMm) / 2 - wearer.monocularPdMm),
      yMm: heightMm - (scale * bMm) / 2,
    },
  });
  const covers = (scale: number) => blankNeeded({ ...question, ...scaled(scale) }).neededMm <= usedMm + 1e-9;
  if (covers(1)) return { scale: 1, aMm };
  if (!covers(0.5)) return null;
  let low = 0.5;
  let high = 1;
  for (let pass = 0; pass < 50; pass++) {
    const middle = (low + high) / 2;
    if (covers(middle)) low = middle;
    else high = middle;
  }
  return { scale: low, aMm: low * aMm };
}
