/**
 * Draws what changed one part after another, a few in a frame: nobody who types or presses meanwhile waits for all of
 * it, and what answers first is seen first.
 */

/** What drawing may take of a frame, ms: styling, laying out and painting come on top. */
const SHARE_MS = 4;
/** A page that is not shown has no frames, and is drawn all the same. */
const NO_FRAME_MS = 100;

const first = new Set<() => void>();
const rest = new Set<() => void>();
let drawing = false;

/** Draws a part when its turn comes; `soon`: before all others. Asked twice meanwhile, it is drawn once. */
export function inTurn(draw: () => void, soon: boolean): void {
  (soon ? first : rest).add(draw);
  if (drawing) return;
  drawing = true;
  setTimeout(drawAll);
}

/** For a part that was drawn with another, or is gone. */
export function outOfTurn(draw: () => void): void {
  first.delete(draw);
  rest.delete(draw);
}

async function drawAll(): Promise<void> {
  while (first.size + rest.size > 0) {
    const end = performance.now() + SHARE_MS;
    for (const draw of [...first, ...rest]) {
      if (performance.now() >= end) break;
      if (!first.delete(draw) && !rest.delete(draw)) continue;
      draw();
      // The part is drawn as soon as this function rests.
      await null;
    }
    await frame();
  }
  drawing = false;
}

const frame = () =>
  new Promise<unknown>((done) => {
    requestAnimationFrame(() => setTimeout(done));
    setTimeout(done, NO_FRAME_MS);
  });
