/**
 * End pieces: what joins rim and temple. From the front a temple is seen only as its end, behind the end piece.
 * Frame places, mm, y up.
 */
import type { PointMm } from '../../optics/types.ts';
import type { Seat } from './bridge.ts';
import { arcBetween, indexAtHeight } from './contour.ts';
import { WIRE_BELOW_MM } from './rim.ts';
import { arcPath, num, xy } from './svgPath.ts';

/** How stout the end piece and temple are: acetate is tall, metal is thin. */
export interface Stoutness {
  /** Height at the hinge, mm. */
  readonly hingeMm: number;
  /** How far the end piece reaches beyond the rim, mm. */
  readonly reachMm: number;
  /** Height of the temple in its middle, and at its tip, mm. */
  readonly middleMm: number;
  readonly tipMm: number;
}

const STOUT: Stoutness = { hingeMm: 6.6, reachMm: 3.6, middleMm: 4.2, tipMm: 6 };
const SLIGHT: Stoutness = { hingeMm: 2.6, reachMm: 4.2, middleMm: 1.5, tipMm: 3.6 };

/** Stoutness that goes with a rim of this depth, mm: wire carries slight temples, sheet stout ones. */
export function stoutness(rimDepthMm: number): Stoutness {
  return rimDepthMm < WIRE_BELOW_MM ? SLIGHT : STOUT;
}

export interface EndPiece {
  /** Path data of the right eye's end piece, in frame places. */
  readonly path: string;
  /** The temple's end that is seen beyond it, SVG places, mm. */
  readonly stub: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

const STUB_WIDTH_MM = 1.7;
/** Height of the end piece's middle above the boxed centre, as a share of B. */
const HINGE_SHARE = 0.25;

/** End piece of the right lens, grown from the rim, and the temple's stub. */
export function endPiece(seat: Seat, stout: Stoutness): EndPiece {
  const middleMm = HINGE_SHARE * seat.bMm;
  const index = (yMm: number) => indexAtHeight(seat.contour, 'temporal', yMm, seat.centreXMm);
  const arc = arcBetween(
    seat.contour,
    index(middleMm + stout.hingeMm * 0.62),
    index(middleMm - stout.hingeMm * 0.75),
  );
  const edge = Math.min(...seat.contour.map((p) => p.xMm));
  return finish(arcPath(arc), arc[0] as PointMm, arc[arc.length - 1] as PointMm, edge, middleMm, stout);
}

/** End piece held by a hole at `hole`, of the right lens. */
export function drilledEndPiece(hole: PointMm, seat: Seat): EndPiece {
  const edge = Math.min(...seat.contour.map((p) => p.xMm));
  const top = { xMm: hole.xMm, yMm: hole.yMm + 1 };
  const low = { xMm: hole.xMm, yMm: hole.yMm - 1 };
  return finish(`M${xy(top)}L${xy(low)}`, top, low, edge, hole.yMm, SLIGHT);
}

function finish(
  start: string,
  top: PointMm,
  low: PointMm,
  edgeXMm: number,
  middleMm: number,
  stout: Stoutness,
): EndPiece {
  const x = edgeXMm - stout.reachMm;
  const half = stout.hingeMm / 2;
  const bottom = { xMm: x, yMm: middleMm - half };
  const head = { xMm: x, yMm: middleMm + half };
  const under = `C${xy({ xMm: (low.xMm + x) / 2, yMm: middleMm - half - 0.3 })} ${xy({ xMm: x + 1, yMm: middleMm - half })} ${xy(bottom)}`;
  const over = `C${xy({ xMm: x + 1, yMm: middleMm + half + 0.2 })} ${xy({ xMm: (top.xMm + x) / 2, yMm: middleMm + half + 0.5 })} ${xy(top)}`;
  const stub = {
    x: Number(num(x - STUB_WIDTH_MM)),
    y: Number(num(-middleMm - half + 0.2)),
    width: STUB_WIDTH_MM + 0.4,
    height: Number(num(stout.hingeMm - 0.4)),
  };
  return { path: `${start}${under}L${xy(head)}${over}Z`, stub };
}
