/** Sizes of all frames by the width of their lens, as opticians sort them: whole millimetres, in groups. */
import type { Frame, FrameSize } from '../catalogue/frame.ts';

export interface SizeLine<F extends Frame = Frame> {
  readonly frame: F;
  readonly size: FrameSize;
}

export interface WidthGroup<F extends Frame = Frame> {
  /** Whole mm, both included; null: open. */
  readonly fromMm: number | null;
  readonly toMm: number | null;
  readonly lines: readonly SizeLine<F>[];
}

/** Last width of each group but the widest: children's and narrow, narrow, middle, wide (common practice). */
const LAST_MM = [46, 49, 52] as const;

/** The groups that hold a size, narrow ones first; inside a group by A, then DBL, then the frame's name. */
export function widthGroups<F extends Frame>(frames: readonly F[]): readonly WidthGroup<F>[] {
  const lines = frames
    .flatMap((frame) => frame.sizes.map((size) => ({ frame, size })))
    .sort(
      (a, b) =>
        a.size.aMm - b.size.aMm ||
        a.size.dblMm - b.size.dblMm ||
        (a.frame.model < b.frame.model ? -1 : a.frame.model > b.frame.model ? 1 : 0),
    );
  const ends = [...LAST_MM, null];
  return ends
    .map((toMm, index) => {
      const last = LAST_MM[index - 1];
      const fromMm = last === undefined ? null : last + 1;
      const inside = ({ size }: SizeLine<F>) =>
        Math.round(size.aMm) >= (fromMm ?? 0) && Math.round(size.aMm) <= (toMm ?? Number.POSITIVE_INFINITY);
      return { fromMm, toMm, lines: lines.filter(inside) };
    })
    .filter((group) => group.lines.length > 0);
}
