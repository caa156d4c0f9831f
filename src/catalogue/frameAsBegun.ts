/** What a frame's file begins with until its owner has measured: shared by those who write it and those who look for it. */

/** Holes of a drilled mounting. */
export const HOLES_AS_BEGUN = [
  { side: 'nasal', insetMm: 4, aboveCentreMm: 3, diameterMm: 1.4 },
  { side: 'temporal', insetMm: 4, aboveCentreMm: 3, diameterMm: 1.4 },
] as const;

export const MASS_AS_BEGUN_G = 20;

export const BOX_AS_BEGUN = ['Case', 'Cloth'] as const;

/** Rim and curves; a grooved or drilled lens has no rim. */
export const rimAsBegun = (mounting: string) => ({
  rimDepthMm: mounting === 'full' ? 3 : 0,
  rimCoverMm: mounting === 'full' ? 0.5 : 0,
  faceFormDeg: 5,
  frameCurveD: 4,
});
