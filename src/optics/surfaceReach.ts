/** Why a lens cannot be cut: a surface turns back before it has covered the outline and the holes. */
import { directionDeg } from './angle.ts';
import type { LensRefusal, LensToMake } from './lensToMake.ts';
import type { OutlinePoints } from './outline.ts';
import { radiusOfPower } from './surfacePower.ts';
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
  const frontFails = frontReach <= needed.mm;
  return {
    reason: frontFails ? 'front-does-not-reach' : 'back-does-not-reach',
    reachMm: frontFails ? frontReach : backReach,
    neededMm: needed.mm,
    atDeg: needed.atDeg,
  };
}
