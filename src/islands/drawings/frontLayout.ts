/** How large the drawing of a pair is, and where its dimension lines run. SVG places, mm, y down. */
import type { EyeFront, FrontView } from '../../quote/view/front.ts';

export interface FrontLayout {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Height of the line that carries the PDs. */
  readonly pdY: number;
  /** Height of the scale bar. */
  readonly scaleY: number;
}

const ABOVE_MM = 8;
const BELOW_MM = 12;
const BESIDE_MM = 13;

const reach = ({ blank }: EyeFront) => (blank === null ? 0 : blank.usedMm / 2);

/** The field that holds both boxes, both blanks and the dimension lines. */
export function frontLayout(view: FrontView): FrontLayout {
  const eyes = [view.right, view.left];
  const side = Math.max(
    view.aMm + view.dblMm / 2 + BESIDE_MM,
    ...eyes.map((eye) => Math.abs(eye.centreXMm + (eye.blank?.middle.xMm ?? 0)) + reach(eye) + 3),
  );
  const up = Math.max(view.bMm / 2 + 4, ...eyes.map((eye) => (eye.blank?.middle.yMm ?? 0) + reach(eye) + 2));
  const down = Math.max(
    view.bMm / 2 + 11,
    ...eyes.map((eye) => reach(eye) - (eye.blank?.middle.yMm ?? 0) + 2),
  );
  const pdY = -up - 3;
  return {
    left: -side,
    top: pdY - ABOVE_MM,
    width: 2 * side,
    height: down + BELOW_MM - pdY + ABOVE_MM,
    pdY,
    scaleY: down + 4,
  };
}
