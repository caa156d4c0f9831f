/** What one lens has to be, before it is known from which blank, and what comes of it. */
import type { Design, Use } from '../catalogue/design.ts';
import type { Material } from '../catalogue/material.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import type { Eye, Outline, PointMm, PrismVector, SpheroCylinder } from '../optics/types.ts';
import type { FrameSituation, LensRefusal, LensSituation } from '../rules/situation.ts';

export interface LensJob {
  readonly eye: Eye;
  /** Back vertex power at the reference point as it is made, compensated where needed, D. */
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
  readonly addD: number;
  readonly outline: Outline;
  readonly reference: PointMm;
  readonly cross: PointMm | null;
  /** Of the near zone, inwards, mm. */
  readonly nearInsetMm: number;
}

/** What the geometry needs of a frame. */
export interface FrameShape {
  readonly situation: FrameSituation;
  readonly right: Outline;
  readonly left: Outline;
  /** Of the right lens, mm from its boxed centre. */
  readonly holes: readonly (PointMm & { readonly diameterMm: number })[];
}

/** What both lenses of a pair share. */
export interface PairJob {
  readonly use: Use;
  readonly design: Design;
  readonly material: Material;
  readonly tint: string | null;
  readonly coating: string | null;
  readonly blank: 'stock' | 'surfaced' | 'auto';
  readonly frame: FrameShape;
  readonly habits: ShopHabits;
  readonly right: LensJob;
  readonly left: LensJob;
}

/** A lens that can be cut, or why there is none. */
export type MadeLens =
  | { readonly lens: LensSituation; readonly refusal: null }
  | { readonly lens: null; readonly refusal: LensRefusal };

/** Holes of one eye, mm from its boxed centre. */
export const holesOf = (shape: FrameShape, eye: Eye): FrameShape['holes'] =>
  eye === 'right' ? shape.holes : shape.holes.map((hole) => ({ ...hole, xMm: -hole.xMm }));
