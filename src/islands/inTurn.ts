/**
 * Draws what changed one part after another, a few in a frame: nobody who types or presses meanwhile waits for all of
 * it, and what answers first is seen first.
 */

import { holdFocus } from './holdFocus.ts';

/** Before all others; with others; or in a frame of its own, since laying it out takes long. */
export type Turn = 'first' | 'next' | 'alone';

/** What drawing may take of a frame, ms: styling, laying out and painting come on top. */
const SHARE_MS = 4;
/** A page that is not shown has no frames, and is drawn all the same. */
const NO_FRAME_MS = 100;

const waiting: Readonly<Record<Turn, Set<() => void>>> = {
  first: new Set(),
  next: new Set(),
  alone: new Set(),
};
const inOrder = () => Object.values(waiting).flatMap((some) => [...some]);
let drawing = false;

/** Draws a part when its turn comes. Asked twice meanwhile, it is drawn once. */
export function inTurn(draw: () => void, turn: Turn): void {
  waiting[turn].add(draw);
  if (drawing) return;
  drawing = true;
  setTimeout(drawAll);
}

/** For a part that was drawn with another, or is gone. True where it was waiting. */
export function outOfTurn(draw: () => void): boolean {
  return Object.values(waiting)
    .map((some) => some.delete(draw))
    .includes(true);
}

async function drawAll(): Promise<void> {
  for (let all = inOrder(); all.length > 0; all = inOrder()) {
    const end = performance.now() + SHARE_MS;
    const bringBack = holdFocus();
    for (const draw of all) {
      const isAlone = waiting.alone.has(draw);
      if (!outOfTurn(draw)) continue;
      draw();
      // The part is drawn as soon as this function rests.
      await Promise.resolve();
      if (isAlone || performance.now() >= end) break;
    }
    bringBack();
    await frame();
  }
  drawing = false;
}

const frame = () =>
  new Promise<unknown>((done) => {
    requestAnimationFrame(() => setTimeout(done));
    setTimeout(done, NO_FRAME_MS);
  });
