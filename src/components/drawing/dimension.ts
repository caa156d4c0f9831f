/**
 * Dimension lines as the trade draws them: thin extension lines from what is measured, a line with arrow heads
 * between them, and the figure beside it. SVG places, mm, y down.
 */
import type { FrameSize } from '../../catalogue/frame.ts';
import type { FrameShape } from './frameDrawing.ts';
import { num } from './svgPath.ts';

export interface Dimension {
  readonly letter: 'A' | 'B' | 'DBL';
  readonly mm: number;
  /** The line between the arrow heads. */
  readonly line: string;
  readonly arrows: string;
  readonly extensions: string;
  readonly text: { readonly x: number; readonly y: number; readonly upright: boolean };
}

const GAP_MM = 1;
const BEYOND_MM = 1.5;
const ARROW_MM = 2.4;

function across(letter: 'A' | 'DBL', mm: number, left: number, y: number, from: number): Dimension {
  const right = left + mm;
  const down = Math.sign(y - from);
  const start = num(from + down * GAP_MM);
  const stop = num(y + down * BEYOND_MM);
  return {
    letter,
    mm,
    line: `M${num(left)} ${num(y)}H${num(right)}`,
    arrows: head(left, y, 1, 0) + head(right, y, -1, 0),
    extensions: `M${num(left)} ${start}V${stop}M${num(right)} ${start}V${stop}`,
    text: { x: Number(num((left + right) / 2)), y: Number(num(y - 1.9)), upright: false },
  };
}

function head(x: number, y: number, dx: number, dy: number): string {
  const [ax, ay] = [x + dx * ARROW_MM, y + dy * ARROW_MM];
  const [sx, sy] = [dy * 0.7, dx * 0.7];
  return `M${num(x)} ${num(y)}L${num(ax + sx)} ${num(ay + sy)}L${num(ax - sx)} ${num(ay - sy)}Z`;
}

/** A below the right lens, DBL above the bridge, B beside the left lens; all between the boxes. */
export function dimensions(size: FrameSize, shape: FrameShape): readonly Dimension[] {
  const halfB = size.bMm / 2;
  const below = shape.halfHeightMm + 8;
  const x = shape.halfWidthMm + 8;
  const boxSide = size.dblMm / 2 + size.aMm;
  const b: Dimension = {
    letter: 'B',
    mm: size.bMm,
    line: `M${num(x)} ${num(-halfB)}V${num(halfB)}`,
    arrows: head(x, -halfB, 0, 1) + head(x, halfB, 0, -1),
    extensions: [-halfB, halfB].map((y) => `M${num(boxSide - 14)} ${num(y)}H${num(x + BEYOND_MM)}`).join(''),
    text: { x: Number(num(x - 1.9)), y: 0, upright: true },
  };
  return [
    across('A', size.aMm, shape.centreXMm - size.aMm / 2, below, halfB),
    across('DBL', size.dblMm, -size.dblMm / 2, -shape.halfHeightMm - 6, -halfB + 4),
    b,
  ];
}
