/** A finished lens as the numbers that the solid models take: radii, angles, corners from the reference point. */
import type { FinishedLens } from '../../../src/optics/finishedLens.ts';
import type { LensToMake } from '../../../src/optics/lensToMake.ts';
import { outlinePoints } from '../../../src/optics/outline.ts';
import type { SolidLens } from './meshModel.ts';

/** A surface flatter than this is modelled with this radius, mm: 0.0006 mm of sag at 35 mm. */
const FLATTEST_MM = 1e6;

const modelRadius = (mm: number) => (Math.abs(mm) < FLATTEST_MM ? mm : FLATTEST_MM * (mm < 0 ? -1 : 1));

/** What a solid is built from. */
export function asSolid(order: LensToMake, lens: FinishedLens): SolidLens {
  const { xMm, yMm } = outlinePoints(order.outline);
  const { tiltSlopeX, tiltSlopeY } = lens.back;
  return {
    frontRadius: modelRadius(lens.front.radiusMm),
    arcRadius: modelRadius(lens.back.generatingRadiusMm),
    tyreRadius: modelRadius(lens.back.revolvedRadiusMm),
    arcDirection: lens.back.generatingMeridianDeg,
    tilt: (Math.atan(Math.hypot(tiltSlopeX, tiltSlopeY)) * 180) / Math.PI,
    tiltTowards: (Math.atan2(tiltSlopeY, tiltSlopeX) * 180) / Math.PI,
    centreThickness: lens.centreThicknessMm,
    outline: Array.from(xMm, (x, i) => [x - order.reference.xMm, (yMm[i] as number) - order.reference.yMm]),
  };
}
