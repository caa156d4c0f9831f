/**
 * Heights of one lens as an estimate for another: a pupil stays as far above the middle of the boxed lens, so that its
 * height from the lowest point differs by half of what B differs (boxing, ISO 8624). Where a frame sits on another
 * nose pad or bridge it differs more, which only measuring again tells.
 */
import { fitFaults } from './plausible.ts';
import type { BothEyes, FitRequest } from './request.ts';

/** Steps that heights are read in, mm (common practice). */
const STEP_MM = 0.5;

/** Whether a fit holds anything that was measured from the lowest point of the lens. */
export const hasHeights = ({ fittingHeight, segmentHeight }: FitRequest): boolean =>
  fittingHeight !== undefined || segmentHeight !== undefined;

/**
 * The fit with its heights, to 0.5 mm, for a lens of another height B, mm; the same where B is the same. A height that
 * nobody could measure is left out, as one that is not known.
 */
export function fitInHeight(fit: FitRequest, fromBMm: number, toBMm: number): FitRequest {
  if (fromBMm === toBMm) return fit;
  const { fittingHeight, segmentHeight, ...rest } = fit;
  const moved = (mm: number) => Math.round((mm + (toBMm - fromBMm) / 2) / STEP_MM) * STEP_MM;
  const named = (name: 'fittingHeight' | 'segmentHeight', both: BothEyes | undefined): FitRequest => {
    const there = both && { [name]: { right: moved(both.right), left: moved(both.left) } };
    return there && fitFaults(there, '').length === 0 ? there : {};
  };
  return {
    ...rest,
    ...named('fittingHeight', fittingHeight),
    ...named('segmentHeight', segmentHeight),
  };
}
