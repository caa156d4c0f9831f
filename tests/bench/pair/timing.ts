/** Time of one run, ms. */
export function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/** The middle of several times; NaN of none. */
export const median = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[times.length >> 1] ?? Number.NaN;
