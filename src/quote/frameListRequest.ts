/** One prescription asked of many frames, and the request for a pair in one of them. */
import type { Use } from '../catalogue/design.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import type { LensPackage } from './frameListPackages.ts';
import type { ShopFrame } from './frameShape.ts';
import type { FitRequest, PairRequest, PrescriptionRequest, QuoteRequest, Wearer } from './request.ts';

export interface ListRequest extends Omit<QuoteRequest, 'pairs'> {
  /** null: whoever the frame is made for. */
  readonly wearer: Wearer | null;
  readonly use: Use;
  readonly prescription: PrescriptionRequest | null;
  /** Without a fitting height it is taken from the shop's datum, see `assumedHeightMm`. */
  readonly fit: FitRequest;
}

/** The pair that a package makes in a frame. */
export function pairIn(
  { frame, size, colourway }: ShopFrame,
  { design, material, tint, coating }: LensPackage,
  asked: ListRequest,
  habits: ShopHabits,
): PairRequest {
  const { use, prescription, fit } = asked;
  const heightMm = assumedHeightMm(size.bMm, habits);
  const assumed = design.corridor !== null && fit.fittingHeight === undefined;
  return {
    frame: frame.id,
    size: size.id,
    colourway: colourway.code,
    wearer: asked.wearer ?? frame.wearer,
    prescription,
    fit: assumed ? { ...fit, fittingHeight: { right: heightMm, left: heightMm } } : fit,
    lenses: {
      use,
      design: design.id,
      material: material.id,
      tint: tint.id,
      coating: coating.id,
    },
  };
}

/** Fitting height in a lens of height B where none was measured, mm: the pupil on the shop's datum. */
const assumedHeightMm = (bMm: number, habits: ShopHabits): number => bMm / 2 + habits.datumAboveCentreMm;
