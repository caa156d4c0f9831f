/** A pair as it is usually measured, to ask what a shop can make: only choices then decide. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame, FrameSize } from '../catalogue/frame.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import type { FitRequest, PrescriptionRequest, QuoteRequest } from './request.ts';

/** Distance between the pupils, mm: near the middle of adults' and of ten-year-olds' (from memory). */
export const USUAL_PD_MM = { adult: 63, child: 56 } as const;
/** How far below the pupil the line of a segment is set, mm: at the lower lid (common practice). */
const SEGMENT_BELOW_PUPIL_MM = 5;
/** An add that most designs are made for, D. */
const ADD_D = 2;

/** The same power for both eyes, cylinder at 180 degrees, issued on the day it is asked for. */
export function usualPrescription(date: string, sphere: number, cylinder: number): PrescriptionRequest {
  const eye = { sphere, add: ADD_D, ...(cylinder === 0 ? {} : { cylinder, axis: 180 }) };
  return { right: eye, left: eye, vertexDistance: 12, issued: date };
}

/** Measurements in a size of a frame: the pupil on the shop's datum, a segment below it. */
export function usualFit(frame: Frame, size: FrameSize, habits: ShopHabits): FitRequest {
  const pupilMm = size.bMm / 2 + habits.datumAboveCentreMm;
  const both = (mm: number) => ({ right: mm, left: mm });
  return {
    pd: USUAL_PD_MM[frame.wearer],
    fittingHeight: both(pupilMm),
    segmentHeight: both(pupilMm - SEGMENT_BELOW_PUPIL_MM),
  };
}

/** An order without codes to where the shop usually sends. */
export function usualTerms({ shop }: Pick<Offer, 'shop'>, date: string): Omit<QuoteRequest, 'pairs'> {
  const { language, destination } = shop;
  return { date, language, destination, taxExemption: null, codes: [] };
}
