/** Where pupils or lids lie in a frame, to show how their heights are measured. */
import type { FrameSize } from '../../catalogue/frame.ts';
import type { ShopHabits } from '../../catalogue/shop.ts';
import type { Eye } from '../../optics/types.ts';
import { monocular } from '../../quote/placement.ts';
import type { FitRequest } from '../../quote/request.ts';
import { EYES } from '../fields.ts';

export interface HeightMark {
  readonly eye: Eye;
  /** From the middle of the bridge, front view, mm: the right eye is on the viewer's left. */
  readonly xMm: number;
  /** Above the lowest point of the lens, mm. */
  readonly heightMm: number;
  /** Whether the height was entered; else it only shows where one lies. */
  readonly given: boolean;
}

/** Where nothing was measured: half the usual PD of adults (Dodgson 2004: mean about 63 mm). */
const USUAL_HALF_PD_MM = 31.5;
/** Usual place of the lower lid below the pupil, mm (common practice). */
const LID_BELOW_PUPIL_MM = 6;

/**
 * One mark an eye, which lies where this shop puts what was not measured: of the pupil, or of the lower lid where a segment is
 * measured to it.
 */
export function heightMarks(
  size: Pick<FrameSize, 'bMm'>,
  fit: FitRequest,
  toLid: boolean,
  { datumAboveCentreMm }: Pick<ShopHabits, 'datumAboveCentreMm'>,
): readonly HeightMark[] {
  const pd = monocular(fit.pd);
  const heights = toLid ? fit.segmentHeight : fit.fittingHeight;
  const usualMm = size.bMm / 2 + datumAboveCentreMm - (toLid ? LID_BELOW_PUPIL_MM : 0);
  return EYES.map((eye) => ({
    eye,
    xMm: (eye === 'right' ? -1 : 1) * (pd?.[eye] ?? USUAL_HALF_PD_MM),
    heightMm: heights?.[eye] ?? usualMm,
    given: heights !== undefined,
  }));
}
