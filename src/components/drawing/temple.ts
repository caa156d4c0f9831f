/**
 * A temple from its side, hinge at the origin, tip to the viewer's right and down. Its length runs along its middle
 * from hinge to tip, round the bend, as the trade measures it. mm, y up.
 */
import type { PointMm } from '../../optics/types.ts';
import type { Contour } from './contour.ts';
import type { Stoutness } from './endPiece.ts';
import { arcPath, num, xy } from './svgPath.ts';

export interface TempleSide {
  readonly path: string;
  /** Line along its middle, from hinge to tip; its length is the temple length. */
  readonly middle: Contour;
}

/** Length behind the bend and radius of the bend over the ear, mm; the bend's turn, degrees (common practice). */
const DROP_MM = 27;
const BEND_RADIUS_MM = 22;
const BEND_DEG = 42;

const STEPS = 96;

interface Station {
  readonly at: PointMm;
  /** Upwards, across the temple. */
  readonly normal: PointMm;
}

/** Place and direction on the middle line, `alongMm` from the hinge of a temple of `lengthMm`. */
function station(alongMm: number, lengthMm: number): Station {
  const turn = (BEND_DEG * Math.PI) / 180;
  const straight = lengthMm - DROP_MM - BEND_RADIUS_MM * turn;
  const angle = Math.min(turn, Math.max(0, (alongMm - straight) / BEND_RADIUS_MM));
  const past = Math.max(0, alongMm - straight - BEND_RADIUS_MM * turn);
  return {
    at: {
      xMm: Math.min(alongMm, straight) + BEND_RADIUS_MM * Math.sin(angle) + past * Math.cos(angle),
      yMm: -BEND_RADIUS_MM * (1 - Math.cos(angle)) - past * Math.sin(angle),
    },
    normal: { xMm: Math.sin(angle), yMm: Math.cos(angle) },
  };
}

/** A temple of this length, mm: its shape, and the line along its middle. */
export function templeSide(lengthMm: number, stout: Stoutness): TempleSide {
  const tip = stout.tipMm / 2;
  const side = (sign: number): Contour =>
    Array.from({ length: STEPS + 1 }, (_, k) => {
      const share = k / STEPS;
      const { at, normal } = station(share * (lengthMm - tip), lengthMm);
      const off = (sign * height(share, stout)) / 2;
      return { xMm: at.xMm + normal.xMm * off, yMm: at.yMm + normal.yMm * off };
    });
  const below = [...side(-1)].reverse();
  const round = `A${num(tip)} ${num(tip)} 0 0 1 ${xy(below[0] as PointMm)}`;
  return {
    path: `${arcPath(side(1))}${round}${arcPath(below, true)}Z`,
    middle: Array.from({ length: STEPS + 1 }, (_, k) => station((k / STEPS) * lengthMm, lengthMm).at),
  };
}

/** Height of the temple at a share of its length, mm: tall at the hinge, slim, stouter again at the tip. */
function height(share: number, stout: Stoutness): number {
  const ease = (from: number, to: number, t: number) => from + (to - from) * (t * t * (3 - 2 * t));
  return share < 0.45
    ? ease(stout.hingeMm, stout.middleMm, share / 0.45)
    : ease(stout.middleMm, stout.tipMm, Math.min(1, (share - 0.45) / 0.45));
}
