/**
 * Light lost by reflection at the surfaces of a lens, normal incidence, unpolarised, no interference between faces.
 *
 * Two published forms of the whole-lens transmittance are kept apart by name; say which one a figure comes from.
 */
import { within } from './domain.ts';

/** Reflectance of each face and the internal transmittance of the material, as fractions 0 to 1. */
export interface LensFaces {
  readonly front: number;
  readonly back: number;
  /** Share of light that survives one pass through the material; 1 where the material is clear. */
  readonly internal?: number;
}

/**
 * Reflectance (0 to 1) of one uncoated surface in air: ((n - 1)/(n + 1))², for the index at the wavelength asked
 * for (nd and ne give different figures). Throws a RangeError below index 1.
 */
export function reflectancePerSurface(index: number): number {
  within('refractive index', index, 1, Infinity, '');
  return ((index - 1) / (index + 1)) ** 2;
}

/** Whole-lens transmittance (0 to 1) without inner reflections: (1 - R1)(1 - R2), times the internal transmittance. */
export function singlePassTransmittance(faces: LensFaces): number {
  const { front, back, internal } = checked(faces);
  return (1 - front) * (1 - back) * internal;
}

/**
 * Whole-lens transmittance (0 to 1) with all inner reflections summed incoherently:
 * (1 - R1)(1 - R2) t / (1 - R1 R2 t²). For an uncoated clear lens this is 2n/(n² + 1).
 */
export function allReflectionsTransmittance(faces: LensFaces): number {
  const { front, back, internal } = checked(faces);
  return ((1 - front) * (1 - back) * internal) / (1 - front * back * internal ** 2);
}

/** Both faces of an uncoated lens of this index. */
export function uncoatedFaces(index: number): LensFaces {
  const reflectance = reflectancePerSurface(index);
  return { front: reflectance, back: reflectance };
}

function checked({ front, back, internal = 1 }: LensFaces): Required<LensFaces> {
  // A face that reflects everything passes nothing; below 1 the series of inner reflections converges.
  within('reflectance of the front', front, 0, 0.999999, '');
  within('reflectance of the back', back, 0, 0.999999, '');
  within('internal transmittance', internal, 0, 1, '');
  return { front, back, internal };
}
