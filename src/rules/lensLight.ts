import type { Coating } from '../catalogue/coating.ts';
import type { Material } from '../catalogue/material.ts';
import type { TintState } from '../catalogue/tint.ts';
import { allReflectionsTransmittance, reflectancePerSurface } from '../optics/reflection.ts';
import { round1, round2 } from './round.ts';

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

/** Light that both faces of a lens throw back, percent to 0.01: the sum of the two, inner reflections left out. */
export function reflectedPercent({
  material,
  coating,
}: {
  readonly material: Pick<Material, 'ne'>;
  readonly coating: Pick<Coating, 'faces' | 'residualReflectance'> | null;
}): number {
  const { front, back } = lensFaces(material, coating);
  return round2(100 * (front + back));
}
