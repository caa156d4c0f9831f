/**
 * Where the temple lies below the front in a dimensioned drawing, and its dimension: a line beside the temple that
 * follows the bend, since the trade measures temples along them. SVG places, mm.
 */
import type { FrameSize } from '../../catalogue/frame.ts';
import type { PointMm } from '../../optics/types.ts';
import type { Stoutness } from './endPiece.ts';
import type { FrameShape } from './frameDrawing.ts';
import { arcPath, num, xy } from './svgPath.ts';
import { templeSide } from './temple.ts';

export interface TempleLayout {
  readonly path: string;
  /** Place of the hinge. */
  readonly xMm: number;
  readonly yMm: number;
  /** Lowest point of the drawing. */
  readonly bottomMm: number;
  /** Dimension line, its ends, and the place of the figure, from the hinge. */
  readonly line: string;
  readonly ends: string;
  readonly textX: number;
  readonly textY: number;
}

const BELOW_FRONT_MM = 25;
const LINE_OFF_MM = 4;

/** All of it that follows from the temple's length and stoutness, which many sizes share. */
type Alone = Pick<TempleLayout, 'path' | 'line' | 'ends' | 'textX' | 'textY'> & { readonly tip: PointMm };

const kept = new Map<string, Alone>();

function templeAlone(templeMm: number, stout: Stoutness): Alone {
  const key = `${templeMm} ${stout.hingeMm} ${stout.middleMm} ${stout.tipMm}`;
  const known = kept.get(key) ?? makeAlone(templeMm, stout);
  kept.set(key, known);
  return known;
}

function makeAlone(templeMm: number, stout: Stoutness): Alone {
  const side = templeSide(templeMm, stout);
  const away = stout.hingeMm / 2 + LINE_OFF_MM;
  const beside = side.middle.map((p, i) => {
    const a = side.middle[Math.max(0, i - 1)] ?? p;
    const b = side.middle[Math.min(side.middle.length - 1, i + 1)] ?? p;
    const length = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm) || 1;
    const normal = { xMm: -(b.yMm - a.yMm) / length, yMm: (b.xMm - a.xMm) / length };
    return { p, normal, line: { xMm: p.xMm + normal.xMm * away, yMm: p.yMm + normal.yMm * away } };
  });
  const ends = [beside[0], beside[beside.length - 1]].flatMap((end) => {
    if (end === undefined) return [];
    const reach = (mm: number) => ({
      xMm: end.p.xMm + end.normal.xMm * mm,
      yMm: end.p.yMm + end.normal.yMm * mm,
    });
    return [`M${xy(reach(away - LINE_OFF_MM + 1))}L${xy(reach(away + 1.5))}`];
  });
  return {
    path: side.path,
    tip: side.middle[side.middle.length - 1] ?? { xMm: 0, yMm: 0 },
    line: arcPath(beside.map((b) => b.line)),
    ends: ends.join(''),
    textX: Number(num(templeMm * 0.38)),
    textY: Number(num(-away - 2.2)),
  };
}

/** The temple of a size, laid out centred below the front. */
export function templeLayout({ templeMm }: FrameSize, { stoutness, halfHeightMm }: FrameShape): TempleLayout {
  const { tip, ...alone } = templeAlone(templeMm, stoutness);
  return {
    ...alone,
    xMm: Number(num(-tip.xMm / 2)),
    yMm: Number(num(halfHeightMm + BELOW_FRONT_MM)),
    bottomMm: halfHeightMm + BELOW_FRONT_MM - tip.yMm + stoutness.tipMm / 2,
  };
}
