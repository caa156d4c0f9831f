import type { Coating } from '../catalogue/coating.ts';
import type { Material } from '../catalogue/material.ts';
import type { TintState } from '../catalogue/tint.ts';
import { allReflectionsTransmittance, reflectancePerSurface } from '../optics/reflection.ts';
import { round1 } from './round.ts';

/**
 * Light that a finished lens lets through in one state of its tint, percent to 0.1: the tint inside, reflections at
 * both faces (those left by the coating where there is one), all inner reflections counted. Taken at ne, since the
 * declared index nearest to the eye's peak is that one.
 */
export function lensLightPercent(
  { transmittance }: Pick<TintState, 'transmittance'>,
  { ne }: Pick<Material, 'ne'>,
  coating: Pick<Coating, 'faces' | 'residualReflectance'> | null,
): number {
  const light = allReflectionsTransmittance({ ...lensFaces({ ne }, coating), internal: transmittance });
  return round1(100 * light);
}

/** Share of light that each face reflects, 0 to 1: bare, or what its coating leaves. */
export function lensFaces(
  { ne }: Pick<Material, 'ne'>,
  coating: Pick<Coating, 'faces' | 'residualReflectance'> | null,
): { readonly front: number; readonly back: number } {
  const bare = reflectancePerSurface(ne);
  const coated = coating?.residualReflectance ?? bare;
  const faces = coating?.faces ?? 'none';
  return { front: faces === 'both' ? coated : bare, back: faces === 'none' ? bare : coated };
}
