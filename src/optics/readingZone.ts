/**
 * A progressive in its outline: where the fitting cross, the corridor's end and the reading zone lie, and how much of
 * that zone is left after cutting. The zone is a rectangle from the corridor's end downwards, moved in by the inset.
 * Lengths in mm, places from the boxed centre.
 */
import { areaWithinMm2, horizontalChord } from './convexClip.ts';
import { inside } from './outline.ts';
import { verticalChord } from './outlineChord.ts';
import type { Outline, PointMm } from './types.ts';

/** A progressive design laid into an outline. */
export interface ZoneQuestion {
  readonly outline: Outline;
  readonly cross: PointMm;
  /** From the cross down to where the add is reached. */
  readonly corridorMm: number;
  /** Signed in the front view: right eye in is positive. */
  readonly insetXMm: number;
  readonly zoneWidthMm: number;
  readonly zoneHeightMm: number;
}

/** What is left of the reading zone. */
export interface ReadingZone {
  /** Middle of the zone's upper side: the corridor's end. */
  readonly corridorEnd: PointMm;
  readonly crossInside: boolean;
  readonly corridorEndInside: boolean;
  readonly wholeMm2: number;
  readonly leftMm2: number;
  /** Share of the area that is left, 0 to 1. */
  readonly share: number;
  /** Width left at half the height of the zone. */
  readonly widthMm: number;
  /** Lens below the corridor's end along its vertical; 0 where the end is outside. */
  readonly belowEndMm: number;
  /** Lens above the cross along its vertical. */
  readonly aboveCrossMm: number;
}

/** Height from the lowest boxed tangent that a progressive needs, mm: corridor and about 4 mm to read in (from memory). */
export function leastFittingHeightMm(corridorMm: number, readingMm = 4): number {
  return corridorMm + readingMm;
}

/** Where a progressive lies in the outline and what is left of its reading zone. */
export function readingZone(question: ZoneQuestion): ReadingZone {
  const { outline, cross, corridorMm, insetXMm, zoneWidthMm, zoneHeightMm } = question;
  const corridorEnd = { xMm: cross.xMm + insetXMm, yMm: cross.yMm - corridorMm };
  const left = corridorEnd.xMm - zoneWidthMm / 2;
  const right = corridorEnd.xMm + zoneWidthMm / 2;
  const top = corridorEnd.yMm;
  const bottom = top - zoneHeightMm;
  const wholeMm2 = zoneWidthMm * zoneHeightMm;
  const leftMm2 = areaWithinMm2(outline, { left, right, bottom, top });
  const chord = horizontalChord(outline, (top + bottom) / 2);
  const widthMm = chord ? Math.max(0, Math.min(right, chord.rightMm) - Math.max(left, chord.leftMm)) : 0;
  const atEnd = verticalChord(outline, corridorEnd.xMm);
  const atCross = verticalChord(outline, cross.xMm);
  return {
    corridorEnd,
    crossInside: inside(outline, cross),
    corridorEndInside: inside(outline, corridorEnd),
    wholeMm2,
    leftMm2,
    share: wholeMm2 > 0 ? leftMm2 / wholeMm2 : 0,
    widthMm,
    belowEndMm: atEnd ? Math.max(0, corridorEnd.yMm - atEnd.bottomMm) : 0,
    aboveCrossMm: atCross ? Math.max(0, atCross.topMm - cross.yMm) : 0,
  };
}
