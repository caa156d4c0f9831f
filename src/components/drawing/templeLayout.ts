/**
 * Where the temple lies below the front in a dimensioned drawing, and its dimension: a line beside the temple that
 * follows the bend, since the trade measures temples along them. SVG places, mm.
 */
import type { FrameSize } from '../../catalogue/frame.ts';
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

/** The temple of a size, laid out centred below the front. */
export function templeLayout(size: FrameSize, shape: FrameShape): TempleLayout {
  const side = templeSide(size.templeMm, shape.stoutness);
  const last = side.middle[side.middle.length - 1] ?? { xMm: 0, yMm: 0 };
  const away = shape.stoutness.hingeMm / 2 + LINE_OFF_MM;
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
    xMm: Number(num(-last.xMm / 2)),
    yMm: Number(num(shape.halfHeightMm + BELOW_FRONT_MM)),
    bottomMm: shape.halfHeightMm + BELOW_FRONT_MM - last.yMm + shape.stoutness.tipMm / 2,
    line: arcPath(beside.map((b) => b.line)),
    ends: ends.join(''),
    textX: Number(num(size.templeMm * 0.38)),
    textY: Number(num(-away - 2.2)),
  };
}
