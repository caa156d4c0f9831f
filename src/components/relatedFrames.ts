/**
 * Frames that are near another by what is stamped on them and how they hold the lens. Sizes are kept sorted by A, so
 * that a frame of a large shop is compared with its neighbours alone.
 */
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

interface Candidate<F extends Frame> extends Related<F> {
  readonly apartMm: number;
}

interface Line<F extends Frame> {
  readonly frame: F;
  readonly size: FrameSize;
}

type Group = `${Frame['wearer']} ${boolean}`;
const groupOf = (wearer: Frame['wearer'], sun: boolean): Group => `${wearer} ${sun}`;

/** Sizes by wearer and light, each group by A, then by id. */
function linesOf<F extends Frame>(frames: readonly F[]): ReadonlyMap<Group, readonly Line<F>[]> {
  const lines = frames
    .flatMap((frame) => frame.sizes.map((size) => ({ frame, size })))
    .sort((a, b) => a.size.aMm - b.size.aMm || (a.frame.id < b.frame.id ? -1 : 1));
  return Map.groupBy(lines, ({ frame }) => groupOf(frame.wearer, frame.sun));
}

const kept = new WeakMap<readonly Frame[], ReadonlyMap<Group, readonly Line<Frame>[]>>();

function keptLines<F extends Frame>(frames: readonly F[]): ReadonlyMap<Group, readonly Line<F>[]> {
  const found = kept.get(frames) ?? linesOf(frames);
  kept.set(frames, found);
  // Made from these very frames.
  return found as ReadonlyMap<Group, readonly Line<F>[]>;
}

/** How far apart, mm: the root of the summed squares of the differences of A, B, DBL and ED, and of the mounting. */
function apartMm(frame: Frame, own: FrameSize, other: Line<Frame>): number {
  const mounting = frame.mounting.kind === other.frame.mounting.kind ? 0 : OTHER_MOUNTING_MM;
  const { aMm, bMm, dblMm, edMm } = other.size;
  return Math.hypot(own.aMm - aMm, own.bMm - bMm, own.dblMm - dblMm, own.edMm - edMm, mounting);
}

function firstFrom(lines: readonly Line<Frame>[], aMm: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle]?.size.aMm ?? 0) < aMm) low = middle + 1;
    else high = middle;
  }
  return low;
}

const nearer = (a: Candidate<Frame>, b: Candidate<Frame>): number =>
  a.apartMm - b.apartMm || (a.frame.id < b.frame.id ? -1 : a.frame.id > b.frame.id ? 1 : 0);

/** The nearest frames of one group, each by its nearest size. */
function nearest<F extends Frame>(frame: F, lines: readonly Line<F>[]): readonly Candidate<F>[] {
  let best: readonly Candidate<F>[] = [];
  const limitMm = () => best[HOW_MANY - 1]?.apartMm ?? Number.POSITIVE_INFINITY;
  for (const own of frame.sizes) {
    const start = firstFrom(lines, own.aMm);
    for (const [from, step] of [
      [start, 1],
      [start - 1, -1],
    ] as const) {
      for (let at = from; ; at += step) {
        const line = lines[at];
        if (line === undefined || Math.abs(line.size.aMm - own.aMm) > limitMm()) break;
        const candidate = { ...line, own, apartMm: apartMm(frame, own, line) };
        const before = best.find((one) => one.frame === line.frame);
        if (line.frame.id === frame.id || candidate.apartMm > limitMm()) continue;
        if (before !== undefined && before.apartMm <= candidate.apartMm) continue;
        best = [...best.filter((one) => one !== before), candidate].sort(nearer).slice(0, HOW_MANY);
      }
    }
  }
  return best;
}

/**
 * The three nearest frames for the same wearer and the same light, the nearest first and equal ones by id. Frames of
 * the other light fill up where there are too few.
 */
export function relatedFrames<F extends Frame>(frame: F, frames: readonly F[]): readonly Related<F>[] {
  const lines = keptLines(frames);
  const same = nearest(frame, lines.get(groupOf(frame.wearer, frame.sun)) ?? []);
  if (same.length === HOW_MANY) return same;
  const others = nearest(frame, lines.get(groupOf(frame.wearer, !frame.sun)) ?? []);
  return [...same, ...others].slice(0, HOW_MANY);
}
