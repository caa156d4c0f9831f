/**
 * The bridge, from the front: saddle, keyhole, or a bar with pads. Shapes are of our own drawing and follow the
 * lens: their ends run along the middle of the rims, under which they are drawn. Frame places, mm, y up.
 */
import type { Bridge } from '../../catalogue/frame.ts';
import type { PointMm } from '../../optics/types.ts';
import { arcBetween, type Contour, indexAtHeight, mirrored } from './contour.ts';
import { arcPath, num, xy } from './svgPath.ts';

/** Where bridge, pads and end pieces sit: the right lens's contour that they grow from, and the lens's size. */
export interface Seat {
  /** Middle of the rim (or the edge, without one) of the right lens, in frame places. */
  readonly contour: Contour;
  /** Boxed centre of the right lens, negative, mm. */
  readonly centreXMm: number;
  readonly bMm: number;
}

/** Heights as shares of B above the boxed centre, thickness and rise in mm. */
const SHAPE: Record<Bridge, { top: number; low: number; thicknessMm: number; riseMm: number }> = {
  saddle: { top: 0.29, low: -0.02, thicknessMm: 5.6, riseMm: 0.6 },
  keyhole: { top: 0.3, low: -0.1, thicknessMm: 4.6, riseMm: 0.4 },
  pads: { top: 0.235, low: 0.185, thicknessMm: 1.9, riseMm: 2.6 },
};

/** Path data of the bridge between two rims. */
export function bridgePath(bridge: Bridge, seat: Seat): string {
  const shape = SHAPE[bridge];
  const side = arcBetween(
    seat.contour,
    indexAtHeight(seat.contour, 'nasal', shape.low * seat.bMm, seat.centreXMm),
    indexAtHeight(seat.contour, 'nasal', shape.top * seat.bMm, seat.centreXMm),
  );
  const low = side[0] as PointMm;
  const top = side[side.length - 1] as PointMm;
  const peakMm = top.yMm + shape.riseMm;
  const down = [...side].reverse().map(mirrored);
  const over = bow(top, mirrored(top), peakMm, 0.55);
  const underMm = peakMm - shape.thicknessMm;
  const under = bridge === 'keyhole' ? keyhole(low, underMm) : bow(mirrored(low), low, underMm, 0.8);
  return `${arcPath(side)}${over}${arcPath(down, true)}${under}Z`;
}

/** A curve from one side to its mirror image that passes the middle at `peakMm`; `wide` near 1 makes it square. */
function bow(from: PointMm, to: PointMm, peakMm: number, wide: number): string {
  const control = (4 * peakMm - from.yMm) / 3;
  const a = { xMm: from.xMm * wide, yMm: control };
  return `C${xy(a)} ${xy(mirrored(a))} ${xy(to)}`;
}

/** The keyhole's opening from the left rim back to the right one, its round head touching `peakMm`. */
function keyhole(low: PointMm, peakMm: number): string {
  const half = -low.xMm;
  const radius = Math.max(1.6, Math.min(half * 0.3, 3.4));
  const neck = { xMm: radius * 0.72, yMm: peakMm - radius * 1.69 };
  const c1 = { xMm: half * 0.93, yMm: low.yMm + (neck.yMm - low.yMm) * 0.55 };
  const c2 = { xMm: neck.xMm + half * 0.22, yMm: neck.yMm - (neck.yMm - low.yMm) * 0.12 };
  const head = `A${num(radius)} ${num(radius)} 0 1 0 ${xy(mirrored(neck))}`;
  const goIn = `C${xy(c1)} ${xy(c2)} ${xy(neck)}`;
  return `${goIn}${head}C${xy(mirrored(c2))} ${xy(mirrored(c1))} ${xy(low)}`;
}

/** A bar between two points of a frame without rims; ends are the right eye's nasal hole and its mirror image. */
export function barPath(end: PointMm): string {
  const { thicknessMm, riseMm } = SHAPE.pads;
  const up = { xMm: end.xMm, yMm: end.yMm + thicknessMm / 2 };
  const down = { xMm: end.xMm, yMm: end.yMm - thicknessMm / 2 };
  const over = bow(up, mirrored(up), up.yMm + riseMm, 0.55);
  return `M${xy(up)}${over}L${xy(mirrored(down))}${bow(mirrored(down), down, down.yMm + riseMm, 0.55)}Z`;
}

/** One nose pad of the right side: its middle (SVG places, mm), its half axes, its lean in degrees, and its arm. */
export interface Pad {
  readonly cx: number;
  readonly cy: number;
  readonly rx: number;
  readonly ry: number;
  readonly leanDeg: number;
  readonly arm: string;
}

/** The right side's pad: leaning in towards the brow, on an arm from the rim. */
export function pad(seat: Seat): Pad {
  const i = indexAtHeight(seat.contour, 'nasal', 0.06 * seat.bMm, seat.centreXMm);
  const root = seat.contour[i] as PointMm;
  const cx = Math.min(-2.6, root.xMm + 2.7);
  const cy = root.yMm - 5.2;
  const elbow = { xMm: cx + 0.3, yMm: root.yMm + 0.6 };
  const arm = `M${xy(root)}Q${xy(elbow)} ${xy({ xMm: cx, yMm: cy + 1.2 })}`;
  return { cx, cy: -cy, rx: 1.9, ry: 4.4, leanDeg: 16, arm };
}
