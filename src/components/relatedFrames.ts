/** Frames that are near another by what is stamped on them and how they hold the lens. */
import type { Frame, FrameSize } from '../catalogue/frame.ts';

export interface Related<F extends Frame = Frame> {
  readonly frame: F;
  /** The nearest two sizes: of the related frame, and of the frame itself. */
  readonly size: FrameSize;
  readonly own: FrameSize;
}

/** Another mounting counts as so many millimetres: a frame of the same kind may differ by that much first. */
const OTHER_MOUNTING_MM = 4;

const HOW_MANY = 3;

/** How far two sizes are apart, mm: the root of the summed squares of the differences of A, B, DBL and ED. */
function apartMm(one: FrameSize, other: FrameSize): number {
  return Math.hypot(one.aMm - other.aMm, one.bMm - other.bMm, one.dblMm - other.dblMm, one.edMm - other.edMm);
}

interface Candidate<F extends Frame> extends Related<F> {
  readonly apartMm: number;
}

function nearestSizes<F extends Frame>(frame: F, other: F): Candidate<F> | null {
  let best: Candidate<F> | null = null;
  const mounting = frame.mounting.kind === other.mounting.kind ? 0 : OTHER_MOUNTING_MM;
  for (const own of frame.sizes)
    for (const size of other.sizes) {
      const apart = Math.hypot(apartMm(own, size), mounting);
      if (best === null || apart < best.apartMm) best = { frame: other, size, own, apartMm: apart };
    }
  return best;
}

/**
 * The three nearest frames for the same wearer and the same light, the nearest first and equal ones by id. Frames of
 * another light fill up where there are too few.
 */
export function relatedFrames<F extends Frame>(frame: F, frames: readonly F[]): readonly Related<F>[] {
  const all = frames
    .filter((other) => other.id !== frame.id && other.wearer === frame.wearer)
    .flatMap((other) => nearestSizes(frame, other) ?? []);
  const order = (a: Candidate<F>, b: Candidate<F>) =>
    Number(a.frame.sun !== frame.sun) - Number(b.frame.sun !== frame.sun) ||
    a.apartMm - b.apartMm ||
    (a.frame.id < b.frame.id ? -1 : 1);
  return all.sort(order).slice(0, HOW_MANY);
}
