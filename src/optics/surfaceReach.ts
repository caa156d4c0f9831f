/** Why a lens cannot be cut: a surface turns back before it has covered the outline and the holes. */
import { directionDeg } from './angle.ts';
import type { LensRefusal, LensToMake } from './lensToMake.ts';
import type { OutlinePoints } from './outline.ts';
import type { PowerProfile } from './powerProfile.ts';
import { powerOfRadius, radiusOfPower } from './surfacePower.ts';
import type { BackSurface, FrontSurface } from './types.ts';

/** Distance from the reference point to the farthest outline point or hole's rim, mm, and its direction, degrees. */
function farthest(lens: LensToMake, shape: OutlinePoints): { readonly mm: number; readonly atDeg: number } {
  const { reference } = lens;
  let found = { mm: 0, atDeg: 0 };
  const take = (xMm: number, yMm: number, extraMm: number) => {
    const mm = Math.hypot(xMm - reference.xMm, yMm - reference.yMm) + extraMm;
    if (mm > found.mm) found = { mm, atDeg: directionDeg(xMm, yMm) };
  };
  shape.xMm.forEach((xMm, i) => {
    take(xMm, shape.yMm[i] as number, 0);
  });
  for (const hole of lens.limits.holes) take(hole.xMm, hole.yMm, hole.diameterMm / 2);
  return found;
}

/** Which surface falls short, and by how much: its reach against what the lens needs from the reference point, mm. */
export function reachFault(
  lens: LensToMake,
  front: FrontSurface,
  back: BackSurface,
  shape: OutlinePoints,
): LensRefusal {
  const needed = farthest(lens, shape);
  // A profile makes its surface as steep as its full addition at the worst, hollow or bulging.
  const tightest = (radiusMm: number, surface: PowerProfile['surface']) => {
    const powerD = (surface === 'front' ? 1 : -1) * powerOfRadius(radiusMm, lens.index);
    const added = lens.profile?.surface === surface ? lens.profile.addD : 0;
    return radiusOfPower(Math.max(Math.abs(powerD), Math.abs(powerD + added)), lens.index);
  };
  const frontRadius = tightest(front.radiusMm, 'front');
  const frontReach = front.conic > -1 ? frontRadius / Math.sqrt(1 + front.conic) : Number.POSITIVE_INFINITY;
  // A tilt brings the turning edge of the back nearer by radius times sine.
  const slope = Math.hypot(back.tiltSlopeX, back.tiltSlopeY);
  const backRadius = Math.min(
    tightest(back.generatingRadiusMm, 'back'),
    tightest(back.revolvedRadiusMm, 'back'),
  );
  const backReach = backRadius * (1 - slope / Math.hypot(1, slope));
  const frontFails = frontReach <= needed.mm;
  return {
    reason: frontFails ? 'front-does-not-reach' : 'back-does-not-reach',
    reachMm: frontFails ? frontReach : backReach,
    neededMm: needed.mm,
    atDeg: needed.atDeg,
  };
}
