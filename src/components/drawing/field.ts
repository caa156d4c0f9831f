/** One field for all drawings of a list, so that they share a scale. */
import type { Frame, FrameSize } from '../../catalogue/frame.ts';
import { frameShape } from './frameDrawing.ts';

export interface Field {
  readonly spanMm: number;
  readonly heightMm: number;
}

const MARGIN_MM = 4;

/** The smallest field, whole mm, that holds each of the fronts with a margin of 4 mm. */
export function fieldFor(fronts: readonly { readonly frame: Frame; readonly size: FrameSize }[]): Field {
  let halfWidth = 0;
  let halfHeight = 0;
  for (const { frame, size } of fronts) {
    const shape = frameShape(frame, size);
    halfWidth = Math.max(halfWidth, shape.halfWidthMm);
    halfHeight = Math.max(halfHeight, shape.halfHeightMm);
  }
  return {
    spanMm: Math.ceil(2 * (halfWidth + MARGIN_MM)),
    heightMm: Math.ceil(2 * (halfHeight + MARGIN_MM)),
  };
}
