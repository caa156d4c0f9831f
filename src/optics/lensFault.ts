/**
 * The inspection of an order before any sag is asked: a number that is not finite or cannot be is an explained
 * refusal, never half a result.
 */
import { keptOutline } from './keptOutline.ts';
import type { HoleLimit, LensRefusal, LensToMake } from './lensToMake.ts';
import type { PowerProfile } from './powerProfile.ts';
import type { Outline } from './types.ts';

/** Null when the number is finite and in range, ends included. */
function outside(field: string, found: number, least: number, most: number): LensRefusal | null {
  if (found >= least && found <= most) return null;
  return { reason: Number.isFinite(found) ? 'out-of-range' : 'not-a-number', field, found };
}

/** The first thing wrong with the numbers of a lens, or null. */
export function lensFault(lens: LensToMake): LensRefusal | null {
  const { power, prism, reference, limits, outline } = lens;
  return (
    outside('power.sphereD', power.sphereD, -60, 60) ??
    outside('power.cylinderD', power.cylinderD, -30, 30) ??
    outside('power.axisDeg', power.axisDeg, -360, 360) ??
    outside('prism.x', prism.x, -60, 60) ??
    outside('prism.y', prism.y, -60, 60) ??
    outside('index', lens.index, 1.3, 2.5) ??
    outside('densityGPerCm3', lens.densityGPerCm3, 0.1, 10) ??
    outside('frontPowerD', lens.frontPowerD, -40, 40) ??
    outside('frontConic', lens.frontConic, -1000, 1000) ??
    outside('reference.xMm', reference.xMm, -100, 100) ??
    outside('reference.yMm', reference.yMm, -100, 100) ??
    outside('limits.centreMm', limits.centreMm, 0, 50) ??
    outside('limits.edgeMm', limits.edgeMm, 0, 50) ??
    outside('fixedCentreThicknessMm', lens.fixedCentreThicknessMm ?? 1, 0.01, 50) ??
    outside('outline.radiiMm.length', outline.radiiMm.length, 36, 100_000) ??
    radiusFault(outline) ??
    (limits.holes.length > 0 ? holeFault(limits.holes) : null) ??
    (lens.profile ? profileFault(lens.profile) : null)
  );
}

function radiusFault(outline: Outline): LensRefusal | null {
  const { impossibleAt } = keptOutline(outline);
  return impossibleAt < 0
    ? null
    : outside(`outline.radiiMm.${impossibleAt}`, outline.radiiMm[impossibleAt] as number, 0.5, 100);
}

function holeFault(holes: readonly HoleLimit[]): LensRefusal | null {
  for (const [i, hole] of holes.entries()) {
    const fault =
      outside(`limits.holes.${i}.xMm`, hole.xMm, -100, 100) ??
      outside(`limits.holes.${i}.yMm`, hole.yMm, -100, 100) ??
      outside(`limits.holes.${i}.diameterMm`, hole.diameterMm, 0, 20) ??
      outside(`limits.holes.${i}.leastMm`, hole.leastMm, 0, 50);
    if (fault) return fault;
  }
  return null;
}

function profileFault(profile: PowerProfile): LensRefusal | null {
  return (
    outside('profile.addD', profile.addD, -6, 6) ??
    outside('profile.insetXMm', profile.insetXMm, -20, 20) ??
    outside('profile.startYMm', profile.startYMm, -50, 50) ??
    outside('profile.endYMm', profile.endYMm, -60, profile.startYMm - 1)
  );
}
