/** What an owner holds the shop's prices to, and the pairs whose price is watched. For the owner's side alone. */
import type { Use } from './design.ts';

/** A pair whose price tells more than its parts: both eyes alike. */
export interface TypicalPair {
  readonly name: string;
  readonly frame: string;
  readonly size: string;
  readonly colourway: string;
  readonly use: Use;
  readonly design: string;
  readonly material: string;
  readonly tint: string | null;
  readonly coating: string | null;
  /** D. */
  readonly sphere: number;
  /** D, either sign. */
  readonly cylinder: number;
  /** D; 0: none. */
  readonly add: number;
}

export interface PriceHabits {
  /** How prices end, minor units: 900 is an end of 9.00, and so of 149.00. Empty: as they like. */
  readonly endings: readonly number[];
  /** Empty: the cheapest pair for each use is watched. */
  readonly typical: readonly TypicalPair[];
}
