/** Single-vision lenses for the traces, made from powers by the textbook formula of the back vertex power. */
import fc from 'fast-check';
import type { TracedLens } from '../../src/optics/lensTrace.ts';
import type { PrismVector, SpheroCylinder } from '../../src/optics/types.ts';
import { real } from './realistic.ts';

export interface LensOrder {
  readonly power: SpheroCylinder;
  readonly frontD: number;
  readonly thicknessMm: number;
  readonly index: number;
  readonly prism?: PrismVector;
}

/** Front sphere, back tyre toroid; radii kept finite, so that every definition applies. */
export function lensOf({ power, frontD, thicknessMm, index, prism }: LensOrder): TracedLens {
  const front = frontD / (1 - ((thicknessMm / 1000) * frontD) / index);
  const alongD = power.sphereD - front;
  const acrossD = power.sphereD + power.cylinderD - front;
  const steepAcross = Math.abs(acrossD) > Math.abs(alongD);
  const radius = (d: number) => (1000 * (1 - index)) / (Math.abs(d) < 1e-3 ? -1e-3 : d);
  const amount = prism === undefined ? 0 : Math.hypot(prism.x, prism.y);
  const turned = Math.atan(amount / 100);
  const slope = Math.sin(turned) / (index - Math.cos(turned));
  return {
    front: { radiusMm: (1000 * (index - 1)) / frontD, conic: 0 },
    back: {
      generatingRadiusMm: radius(steepAcross ? acrossD : alongD),
      revolvedRadiusMm: radius(steepAcross ? alongD : acrossD),
      generatingMeridianDeg: (power.axisDeg + (steepAcross ? 90 : 0)) % 180,
      tiltSlopeX: prism === undefined || amount === 0 ? 0 : (slope * prism.x) / amount,
      tiltSlopeY: prism === undefined || amount === 0 ? 0 : (slope * prism.y) / amount,
    },
    centreThicknessMm: thicknessMm,
    index,
  };
}

/** Lenses of usual form: the front fits the power, so that a 25 degree gaze passes the surfaces. */
export const usualOrder: fc.Arbitrary<LensOrder> = fc
  .record({
    sphere: fc.integer({ min: -32, max: 24 }).map((q) => q / 4),
    cylinderD: fc.integer({ min: -16, max: 0 }).map((q) => q / 4),
    axisDeg: fc.integer({ min: 1, max: 180 }),
    index: fc.constantFrom(1.5, 1.53, 1.59, 1.6, 1.67, 1.74),
    spread: real(-1, 2),
  })
  .map(({ sphere, cylinderD, axisDeg, index, spread }) => ({
    power: { sphereD: sphere, cylinderD, axisDeg },
    frontD: Math.max(1, (sphere > 0 ? sphere : sphere / 2) + 5 + spread),
    thicknessMm: sphere > 0 ? 2 + sphere / 1.5 : 2,
    index,
  }));
