/**
 * Names of prism: base in, out, up, down for an eye; polar form in 360-degree notation; and the pair of eyes.
 *
 * Base in is nasal: +x for the right lens, -x for the left (front view).
 */
import { directionDeg, toRadians } from './angle.ts';
import type { Eye, PrismVector } from './types.ts';

/** Cardinal base directions. */
export const BASES = ['in', 'out', 'up', 'down'] as const;
export type Base = (typeof BASES)[number];

/** A prism by its amount (prism dioptres) and its base: a cardinal name, or degrees in 360-degree notation. */
export interface NamedPrism {
  readonly amount: number;
  readonly base: Base | number;
}

/** A prism by amount (prism dioptres, 0 or more) and base direction, degrees 0 to below 360, front view. */
export interface PolarPrism {
  readonly amount: number;
  readonly baseDeg: number;
}

/** A prism resolved for an eye; a component that is zero has amount 0 and base in or up. Prism dioptres. */
export interface ResolvedPrism {
  readonly horizontal: { readonly amount: number; readonly base: 'in' | 'out' };
  readonly vertical: { readonly amount: number; readonly base: 'up' | 'down' };
}

/** Prism of the two eyes against each other, prism dioptres. */
export interface PairPrism {
  /** Sum of both eyes, positive base in, negative base out. */
  readonly baseIn: number;
  /** Right eye against left, positive right base up (equally left base down). */
  readonly rightBaseUp: number;
}

/** +1 where base in points to +x (right eye), -1 for the left. */
export const nasalSign = (eye: Eye): 1 | -1 => (eye === 'right' ? 1 : -1);

/** Vector (prism dioptres) of a named prism on an eye. */
export function prismFromBase(eye: Eye, { amount, base }: NamedPrism): PrismVector {
  switch (base) {
    case 'in':
      return { x: nasalSign(eye) * amount, y: 0 };
    case 'out':
      return { x: -nasalSign(eye) * amount, y: 0 };
    case 'up':
      return { x: 0, y: amount };
    case 'down':
      return { x: 0, y: -amount };
    default:
      return prismFromPolar({ amount, baseDeg: base });
  }
}

/** A prism vector resolved into horizontal and vertical prism for an eye, prism dioptres. */
export function resolvePrism(eye: Eye, prism: PrismVector): ResolvedPrism {
  const nasal = nasalSign(eye) * prism.x;
  return {
    horizontal: { amount: Math.abs(nasal), base: nasal < 0 ? 'out' : 'in' },
    vertical: { amount: Math.abs(prism.y), base: prism.y < 0 ? 'down' : 'up' },
  };
}

/** Vector (prism dioptres) of a polar prism. */
export function prismFromPolar({ amount, baseDeg }: PolarPrism): PrismVector {
  const angle = toRadians(baseDeg);
  return { x: amount * Math.cos(angle), y: amount * Math.sin(angle) };
}

/** Polar form of a prism vector; no prism has base 0. */
export function prismToPolar(prism: PrismVector): PolarPrism {
  const amount = Math.hypot(prism.x, prism.y);
  return { amount, baseDeg: amount === 0 ? 0 : directionDeg(prism.x, prism.y) };
}

/** What the two eyes meet together: equal prism of equal base direction (as up and up) cancels. Prism dioptres. */
export const pairPrism = (right: PrismVector, left: PrismVector): PairPrism => ({
  baseIn: right.x - left.x,
  rightBaseUp: right.y - left.y,
});
