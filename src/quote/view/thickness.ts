/** Both surfaces of a finished lens at any place, for its section and its edge. */

import type { Material } from '../../catalogue/material.ts';
import { profileSag } from '../../optics/powerProfile.ts';
import { frontSag } from '../../optics/surface.ts';
import { profileOn, rise, thicknessField } from '../../optics/thicknessField.ts';
import type { LensSituation } from '../../rules/situation.ts';

/** Depth of the front behind its vertex and thickness along the axis, mm; NaN where a surface does not reach. */
export interface LensAt {
  readonly frontMm: number;
  readonly thicknessMm: number;
}

/** A function that gives both at a place in mm from the reference point. */
export function lensAt(
  { surfaces }: Pick<LensSituation, 'surfaces'>,
  { ne }: Pick<Material, 'ne'>,
): (xMm: number, yMm: number) => LensAt {
  const { front, back, centreThicknessMm, profile } = surfaces;
  const prepared = profileOn(front, back, profile, ne);
  const field = thicknessField(front, back, prepared);
  const onFront = prepared !== null && prepared.profile.surface === 'front' ? prepared : null;
  return (xMm, yMm) => ({
    frontMm: frontSag(front, xMm * xMm + yMm * yMm) + (onFront === null ? 0 : profileSag(onFront, xMm, yMm)),
    thicknessMm: centreThicknessMm + rise(field, xMm, yMm),
  });
}
