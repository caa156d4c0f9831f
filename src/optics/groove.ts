/**
 * A groove for a nylon or metal cord: how much glass stands on either side of it. Lengths in mm.
 */

/** A groove cut into the edge. */
export interface Groove {
  readonly widthMm: number;
  /** Share of the edge from the front at which the middle of the groove runs, 0 to 1. */
  readonly shareFromFront: number;
  /** Least glass on each side. */
  readonly leastShoulderMm: number;
}

/** The thinner shoulder over the whole edge. */
export interface GrooveShoulder {
  readonly leastMm: number;
  readonly atDeg: number;
  /** 0 when both shoulders are everywhere thick enough. */
  readonly missingMm: number;
}

/** The least edge, mm, that leaves both shoulders of a groove: what to pass as the edge limit of a grooved lens. */
export function leastGroovedEdgeMm(groove: Groove): number {
  const nearer = Math.min(groove.shareFromFront, 1 - groove.shareFromFront);
  return (groove.leastShoulderMm + groove.widthMm / 2) / nearer;
}

/** The thinner shoulder of a groove along an edge (mm at each radius), and what it lacks. */
export function grooveShoulder(edgeMm: readonly number[], groove: Groove): GrooveShoulder {
  const nearer = Math.min(groove.shareFromFront, 1 - groove.shareFromFront);
  let at = 0;
  for (let i = 1; i < edgeMm.length; i++) if ((edgeMm[i] as number) < (edgeMm[at] as number)) at = i;
  const leastMm = nearer * (edgeMm[at] as number) - groove.widthMm / 2;
  return {
    leastMm,
    atDeg: (at * 360) / edgeMm.length,
    missingMm: Math.max(0, groove.leastShoulderMm - leastMm),
  };
}
