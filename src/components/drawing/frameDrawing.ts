/**
 * A frame from the front, to scale: 1 user unit is 1 mm, y down, origin in the middle of the bridge at the height
 * of the boxed centres. Only the right eye (at the viewer's left) is given; the left one is its mirror image.
 */
import type { Frame, FrameSize, Hole } from '../../catalogue/frame.ts';
import type { PointMm } from '../../optics/types.ts';
import { barPath, bridgePath, type Pad, pad, type Seat } from './bridge.ts';
import { beside, type Contour, contourOf, shifted } from './contour.ts';
import { drilledEndPiece, type EndPiece, endPiece, type Stoutness, stoutness } from './endPiece.ts';
import { boxPath, type RimPaths, rimPaths, rimWidth } from './rim.ts';
import { closedPath, num } from './svgPath.ts';

export interface DrawnHole {
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}

export interface FrameShape extends RimPaths {
  /** The lens to its bevel apex or groove bottom: what A, B and DBL are measured on. */
  readonly apex: string;
  /** Its box. */
  readonly box: string;
  /** Boxed centre of the right lens, x in mm (negative). */
  readonly centreXMm: number;
  /** Bridge, across both sides. */
  readonly bridge: string;
  readonly pad: Pad | null;
  readonly end: EndPiece;
  readonly holes: readonly DrawnHole[];
  readonly stoutness: Stoutness;
  /** Half the whole width with temple stubs, mm. */
  readonly halfWidthMm: number;
  /** Reach above and below the boxed centre, rims included, mm. */
  readonly halfHeightMm: number;
}

const kept = new WeakMap<FrameSize, { readonly frame: Frame; readonly shape: FrameShape }>();

/** All parts of one size of a frame, as path data in mm. A size is drawn on many pages and worked out once. */
export function frameShape(frame: Frame, size: FrameSize): FrameShape {
  const known = kept.get(size);
  if (known?.frame === frame) return known.shape;
  const shape = makeShape(frame, size);
  kept.set(size, { frame, shape });
  return shape;
}

function makeShape(frame: Frame, size: FrameSize): FrameShape {
  const centreXMm = -(size.aMm + size.dblMm) / 2;
  const lens = shifted(contourOf(size.outline.radiiMm), centreXMm);
  const width = rimWidth(frame);
  const contour = beside(lens, (width.outMm - width.inMm) / 2);
  const seat: Seat = { contour, centreXMm, bMm: size.bMm };
  const stout = stoutness(frame.rimDepthMm);
  const holes = frame.mounting.kind === 'drilled' ? frame.mounting.holes : [];
  const places = holes.map((hole) => holePlace(hole, size, centreXMm));
  const nasal = mean(places.filter((_, i) => holes[i]?.side === 'nasal'));
  const temporal = mean(places.filter((_, i) => holes[i]?.side === 'temporal'));
  const end = temporal ? drilledEndPiece(temporal, seat) : endPiece(seat, stout);
  const bar = frame.mounting.kind === 'drilled' && nasal ? barPath(nasal) : bridgePath(size.bridge, seat);
  return {
    ...rimPaths(lens, frame.mounting.kind, width),
    apex: closedPath(lens),
    box: boxOf(size, centreXMm),
    centreXMm,
    bridge: bar,
    pad: size.bridge === 'pads' ? pad(seat) : null,
    end,
    holes: places.map((p, i) => drawnHole(p, holes[i] as Hole)),
    stoutness: stout,
    halfWidthMm: -Math.min(...extremes(contour, width.outMm), end.stub.x),
    halfHeightMm: size.bMm / 2 + width.outMm,
  };
}

function extremes(contour: Contour, outMm: number): number[] {
  return [Math.min(...contour.map((p) => p.xMm)) - outMm / 2];
}

/** Middle of a hole of the right lens, frame places, mm: insets count from the box's nasal or temporal side. */
export function holePlace(hole: Hole, size: Pick<FrameSize, 'aMm'>, centreXMm: number): PointMm {
  const fromCentre = size.aMm / 2 - hole.insetMm;
  return {
    xMm: centreXMm + (hole.side === 'nasal' ? fromCentre : -fromCentre),
    yMm: hole.aboveCentreMm,
  };
}

function drawnHole(place: PointMm, hole: Hole): DrawnHole {
  return {
    cx: Number(num(place.xMm)),
    cy: Number(num(-place.yMm)),
    r: Number(num(hole.diameterMm / 2)),
  };
}

function mean(points: readonly PointMm[]): PointMm | null {
  if (points.length === 0) return null;
  const sum = points.reduce((a, p) => ({ xMm: a.xMm + p.xMm, yMm: a.yMm + p.yMm }));
  return { xMm: sum.xMm / points.length, yMm: sum.yMm / points.length };
}

function boxOf(size: FrameSize, centreXMm: number): string {
  const halfA = size.aMm / 2;
  return boxPath(centreXMm - halfA, size.bMm / 2, centreXMm + halfA, -size.bMm / 2);
}
