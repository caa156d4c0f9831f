/**
 * The segment of a bifocal in its outline: a circle with its top cut off flat (or whole, for a round one). Lengths in
 * mm, places from the boxed centre.
 */
import { commonAreaMm2, horizontalChord, polygonAreaMm2 } from './convexClip.ts';
import { verticalChord } from './outlineChord.ts';
import type { Outline, PointMm } from './types.ts';

/** Size of a segment; its circle has the width as diameter. A 28 mm flat top has its centre 5 mm below the top. */
export interface SegmentShape {
  readonly widthMm: number;
  readonly centreBelowTopMm: number;
}

/** What of a segment the outline leaves. */
export interface SegmentLeft {
  readonly wholeMm2: number;
  readonly leftMm2: number;
  readonly share: number;
  /** Width of the flat top that is inside the outline. */
  readonly topWidthMm: number;
  /** Height of segment below its top along its middle that is inside. */
  readonly depthMm: number;
}

const CORNERS = 180;

/** Corners of a segment, counter-clockwise, whose top's middle is at `top`. */
export function segmentCorners(shape: SegmentShape, top: PointMm): (readonly [number, number])[] {
  const r = shape.widthMm / 2;
  const flat = Math.asin(Math.min(1, shape.centreBelowTopMm / r));
  const turn = Math.PI + 2 * flat;
  return Array.from({ length: CORNERS + 1 }, (_, i) => {
    const angle = Math.PI - flat + (turn * i) / CORNERS;
    return [top.xMm + r * Math.cos(angle), top.yMm - shape.centreBelowTopMm + r * Math.sin(angle)] as const;
  });
}

/** How much of a segment is left in an outline. */
export function segmentLeft(outline: Outline, shape: SegmentShape, top: PointMm): SegmentLeft {
  const corners = segmentCorners(shape, top);
  const wholeMm2 = polygonAreaMm2(corners);
  const leftMm2 = commonAreaMm2(outline, corners);
  const r = shape.widthMm / 2;
  const half = Math.sqrt(Math.max(0, r * r - shape.centreBelowTopMm * shape.centreBelowTopMm));
  const chord = horizontalChord(outline, top.yMm);
  const topWidthMm = chord
    ? Math.max(0, Math.min(top.xMm + half, chord.rightMm) - Math.max(top.xMm - half, chord.leftMm))
    : 0;
  const below = verticalChord(outline, top.xMm);
  const whole = r + shape.centreBelowTopMm;
  const depthMm = below
    ? Math.max(0, Math.min(top.yMm, below.topMm) - Math.max(top.yMm - whole, below.bottomMm))
    : 0;
  return { wholeMm2, leftMm2, share: leftMm2 / wholeMm2, topWidthMm, depthMm };
}
