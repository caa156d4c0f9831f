/**
 * What holds the lens, from the front: the full rim as a ring, the half rim and thread of a grooved lens, or the
 * bare edge of a drilled one. Frame files say how deep a rim is from front to back, not how wide it looks: a rim cut
 * from sheet is drawn as wide as it is deep, one of bent wire as 0.6 of that.
 */
import type { Frame } from '../../catalogue/frame.ts';
import { arcBetween, beside, type Contour, indexAtHeight } from './contour.ts';
import { arcPath, closedPath, xy } from './svgPath.ts';

/** How far a rim reaches from the bevel apex, outwards and inwards over the lens, mm. */
export interface RimWidth {
  readonly outMm: number;
  readonly inMm: number;
}

/** Rims less deep than this, mm, are of wire. */
export const WIRE_BELOW_MM = 2.6;
const WIRE_WIDTH_SHARE = 0.6;
/** Thinnest rim that is still seen at the scale of a list, mm. */
const LEAST_WIDTH_MM = 1.1;

/** Visible rim of a frame, mm from the bevel apex; zero where the lens has no rim. */
export function rimWidth(frame: Pick<Frame, 'mounting' | 'rimDepthMm' | 'rimCoverMm'>): RimWidth {
  if (frame.mounting.kind === 'drilled') return { outMm: 0, inMm: 0 };
  const share = frame.rimDepthMm < WIRE_BELOW_MM ? WIRE_WIDTH_SHARE : 1;
  const widthMm = Math.max(LEAST_WIDTH_MM, frame.rimDepthMm * share);
  const inMm = Math.min(frame.rimCoverMm, widthMm / 2);
  return { outMm: widthMm - inMm, inMm };
}

/** Drawn parts that hold one lens, as path data. */
export interface RimPaths {
  /** Material of the rim; null without one. Fill with the even-odd rule. */
  readonly rim: string | null;
  /** Thread of a grooved lens, a line; null elsewhere. */
  readonly thread: string | null;
  /** The lens that is seen, inside the rim. */
  readonly lens: string;
}

/** The rim, thread and visible lens of one eye; `lens` to the bevel apex or groove bottom, in frame places, mm. */
export function rimPaths(lens: Contour, kind: Frame['mounting']['kind'], width: RimWidth): RimPaths {
  const outer = beside(lens, width.outMm);
  const inner = beside(lens, -width.inMm);
  if (kind === 'full') {
    const seen = closedPath(inner);
    return { rim: closedPath(outer) + seen, thread: null, lens: seen };
  }
  if (kind === 'drilled') return { rim: null, thread: null, lens: closedPath(lens) };
  return { rim: browPath(lens, outer, inner), thread: threadPath(lens), lens: closedPath(lens) };
}

/** Heights at which a grooved lens leaves its rim, as a share of half the lens height. */
const RIM_ENDS = { nasal: -0.1, temporal: 0.05 };

function rimEnds(contour: Contour, middleMm: Ends): { from: number; to: number } {
  return {
    from: indexAtHeight(contour, 'nasal', middleMm.nasal, middleMm.x),
    to: indexAtHeight(contour, 'temporal', middleMm.temporal, middleMm.x),
  };
}

interface Ends {
  readonly nasal: number;
  readonly temporal: number;
  readonly x: number;
}

function ends(lens: Contour): Ends {
  const xs = lens.map((p) => p.xMm);
  const halfB = Math.max(...lens.map((p) => p.yMm));
  const x = (Math.max(...xs) + Math.min(...xs)) / 2;
  return { nasal: RIM_ENDS.nasal * halfB, temporal: RIM_ENDS.temporal * halfB, x };
}

function browPath(lens: Contour, outer: Contour, inner: Contour): string {
  const { from, to } = rimEnds(lens, ends(lens));
  const back = [...arcBetween(inner, from, to)].reverse();
  return `${arcPath(arcBetween(outer, from, to))}${arcPath(back, true)}Z`;
}

function threadPath(lens: Contour): string {
  const { from, to } = rimEnds(lens, ends(lens));
  return arcPath(arcBetween(lens, to, from));
}

/** A box as path data, for the boxed lens. Corners in mm. */
export function boxPath(leftMm: number, topMm: number, rightMm: number, bottomMm: number): string {
  const a = { xMm: leftMm, yMm: topMm };
  const b = { xMm: rightMm, yMm: topMm };
  const c = { xMm: rightMm, yMm: bottomMm };
  const d = { xMm: leftMm, yMm: bottomMm };
  return `M${xy(a)}L${xy(b)}L${xy(c)}L${xy(d)}Z`;
}
