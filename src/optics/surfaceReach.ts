import type { LensRefusal, LensToMake } from './lensToMake.ts';
import type { OutlinePoints } from './outline.ts';
import { radiusOfPower } from './surfacePower.ts';
import type { BackSurface, FrontSurface } from './types.ts';

/** Which surface falls short, and by how much: its reach against the outline's farthest point from the reference. */
export function reachFault(
  lens: LensToMake,
  front: FrontSurface,
  back: BackSurface,
  shape: OutlinePoints,
): LensRefusal {
  let neededMm = 0;
  let at = 0;
  for (let i = 0; i < shape.xMm.length; i++) {
    const r = Math.hypot(
      (shape.xMm[i] as number) - lens.reference.xMm,
      (shape.yMm[i] as number) - lens.reference.yMm,
    );
    if (r > neededMm) {
      neededMm = r;
      at = i;
    }
  }
  // A profile makes the front as steep as its full addition at the worst.
  const added = lens.profile?.surface === 'front' ? Math.max(0, lens.profile.addD) : 0;
  const frontRadius = Math.min(
    Math.abs(front.radiusMm),
    radiusOfPower(Math.abs(lens.frontPowerD) + added, lens.index),
  );
  const frontReach = front.conic > -1 ? frontRadius / Math.sqrt(1 + front.conic) : Number.POSITIVE_INFINITY;
  // A tilt brings the turning edge of the back nearer by radius times sine.
  const slope = Math.hypot(back.tiltSlopeX, back.tiltSlopeY);
  const backRadius = Math.min(Math.abs(back.generatingRadiusMm), Math.abs(back.revolvedRadiusMm));
  const backReach = backRadius * (1 - slope / Math.hypot(1, slope));
  const frontFails = frontReach <= neededMm;
  return {
    reason: frontFails ? 'front-does-not-reach' : 'back-does-not-reach',
    reachMm: frontFails ? frontReach : backReach,
    neededMm,
    atDeg: (at * 360) / shape.xMm.length,
  };
}
