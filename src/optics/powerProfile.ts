/**
 * The extra sag of a progressive or office lens: a smooth rise of power down a corridor on one surface, with
 * circular cross-sections. An estimate by construction, since no maker's surface is known.
 *
 * The corridor line bends so that its curvature at the height y is k(y); the horizontal section there is the
 * circle which makes the surface as strong across as along (by Meusnier its radius is that of k times the cosine
 * of the line's slope). With a constant k this is the sphere of curvature k exactly. The extra sag is the
 * difference of two such surfaces, with and without the added power, and is laid upon the true base surface.
 */

/** Power added along the corridor, y up and mm from the reference point of the lens. */
export interface PowerProfile {
  /** Full addition at the corridor's end, D; negative for a degression. */
  readonly addD: number;
  /** Height at which the power begins to change, mm. */
  readonly startYMm: number;
  /** Height at which the change is complete, mm; below the start. */
  readonly endYMm: number;
  /** Sideways shift of the near zone's axis, mm in the front view: right eye in is positive, left negative. */
  readonly insetXMm: number;
  /** Which surface carries it. */
  readonly surface: 'front' | 'back';
}

/** Share of the addition at a height: 0 above the start, 1 below the end, smooth between (3t2 - 2t3). */
export function additionShare(profile: PowerProfile, yMm: number): number {
  const t = (profile.startYMm - yMm) / (profile.startYMm - profile.endYMm);
  if (!(t > 0)) return 0;
  return t >= 1 ? 1 : t * t * (3 - 2 * t);
}

/** Added power at a height on the corridor, D. */
export function addedPowerD(profile: PowerProfile, yMm: number): number {
  return profile.addD * additionShare(profile, yMm);
}

/** The integral of `additionShare` from `y` up to the start, mm: how far the line's slope has turned. */
function sharedLength(profile: PowerProfile, yMm: number): number {
  const length = profile.startYMm - profile.endYMm;
  const t = (profile.startYMm - yMm) / length;
  if (!(t > 0)) return 0;
  return t >= 1 ? length * (t - 0.5) : length * (t * t * t - (t * t * t * t) / 2);
}

/** A profile on its surface, ready for many points; heights in steps of 2 mm. */
export interface PreparedProfile {
  readonly profile: PowerProfile;
  /** Curvature of the base surface and of the full addition, 1/mm, positive when convex to the front. */
  readonly base: number;
  readonly added: number;
  /** Integral of the share from the reference point up to the start, mm. */
  readonly atReference: number;
  /** Sag of the corridor line less that of the base circle, and its slope, at each height. */
  readonly line: Float64Array;
  readonly slope: Float64Array;
}

const REACH_MM = 50;
const STEP_MM = 2;

/** Makes a profile ready on a surface of curvature `base` (1/mm, positive when convex to the front), index given. */
export function prepareProfile(profile: PowerProfile, base: number, index: number): PreparedProfile {
  const sign = profile.surface === 'front' ? 1 : -1;
  const added = (sign * profile.addD) / (1000 * (index - 1));
  const middle = REACH_MM / STEP_MM;
  const line = new Float64Array(2 * middle + 1);
  const slope = new Float64Array(2 * middle + 1);
  const atReference = sharedLength(profile, 0);
  const slopeAt = (y: number) => {
    // The sine of the line's slope is the integral of its curvature.
    const baseSine = base * y;
    const sine = baseSine + added * (atReference - sharedLength(profile, y));
    return sine / Math.sqrt(1 - sine * sine) - baseSine / Math.sqrt(1 - baseSine * baseSine);
  };
  slope[middle] = 0;
  for (const direction of [1, -1]) {
    let sum = 0;
    let before = 0;
    for (let i = 1; i <= middle; i++) {
      const y = direction * STEP_MM * i;
      const here = slopeAt(y);
      const between = slopeAt(y - (direction * STEP_MM) / 2);
      sum += (direction * STEP_MM * (before + 4 * between + here)) / 6;
      line[middle + direction * i] = sum;
      slope[middle + direction * i] = here;
      before = here;
    }
  }
  return { profile, base, added, atReference, line, slope };
}

/** Extra sag at a point from the reference point, mm towards the eye; NaN beyond 50 mm or the surface's reach. */
export function profileSag(p: PreparedProfile, xMm: number, yMm: number): number {
  const { profile, base, line, slope } = p;
  const at = (yMm + REACH_MM) / STEP_MM;
  const i = Math.floor(at);
  if (!(i >= 0 && i < line.length - 1)) return Number.NaN;
  const t = at - i;
  const z0 = line[i] as number;
  const z1 = line[i + 1] as number;
  const m0 = STEP_MM * (slope[i] as number);
  const m1 = STEP_MM * (slope[i + 1] as number);
  // Cubic Hermite between the steps: the slopes are exact.
  const z = z0 + t * (m0 + t * (3 * (z1 - z0) - 2 * m0 - m1 + t * (m0 + m1 - 2 * (z1 - z0))));
  const share = additionShare(profile, yMm);
  const sine = base * yMm + p.added * (p.atReference - sharedLength(profile, yMm));
  const x = xMm - profile.insetXMm * share;
  return z + section(base + p.added * share, sine, x) - section(base, base * yMm, x);
}

/** Sag of the circular horizontal section of a surface of curvature `k` where the line's slope has this sine. */
function section(k: number, sine: number, x: number): number {
  // The curvature k / cosine and a circle's sag, over one divisor.
  const cosine2 = 1 - sine * sine;
  const kx = k * x;
  return (kx * x) / (Math.sqrt(cosine2) + Math.sqrt(cosine2 - kx * kx));
}

/** The thinning prism of a progressive, prism dioptres base down, from the add: a share of it, 2/3 unless the design says. */
export function thinningPrism(addD: number, share = 2 / 3): { readonly x: number; readonly y: number } {
  return { x: 0, y: -share * addD };
}
