/** Frames that are new or have changed, by the days that they tell. */
import type { ListedFrame } from '../catalogue/frame.ts';

export interface News {
  readonly frame: ListedFrame;
  /** Civil day. */
  readonly day: string;
  readonly kind: 'added' | 'changed';
}

/** The last thing that each frame tells up to a civil date, the newest first and equal ones by name; at most `most`. */
export function newsOf(frames: readonly ListedFrame[], date: string, most: number): readonly News[] {
  return frames
    .flatMap((frame): News[] => {
      const told = (['changed', 'added'] as const).flatMap((kind) => {
        const day = frame[kind];
        return day === null || day > date ? [] : [{ frame, day, kind }];
      });
      // A frame that was added and changed on one day is new.
      return told.sort((a, b) => compare(b.day, a.day) || compare(a.kind, b.kind)).slice(0, 1);
    })
    .sort((a, b) => compare(b.day, a.day) || compare(a.frame.model, b.frame.model))
    .slice(0, most);
}

/** Frames added up to a civil date, the newest first; at most `most`. */
export function newFrames(
  frames: readonly ListedFrame[],
  date: string,
  most: number,
): readonly ListedFrame[] {
  return frames
    .filter(({ added }) => added !== null && added <= date)
    .sort((a, b) => compare(b.added ?? '', a.added ?? '') || compare(a.model, b.model))
    .slice(0, most);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
