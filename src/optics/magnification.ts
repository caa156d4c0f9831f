/**
 * Spectacle magnification: the retinal image with the lens against that without, distance object, paraxial.
 *
 * SM = shape x power = 1/(1 - (t/n) F1) x 1/(1 - d F), with d from the back vertex to the ENTRANCE PUPIL: about 3 mm
 * more than the vertex distance to the cornea.
 */
import { within } from './domain.ts';
import type { SpheroCylinder } from './types.ts';

/** From the cornea to the entrance pupil of a usual eye, mm. */
export const CORNEA_TO_ENTRANCE_PUPIL_MM = 3;

/** What fixes the shape of a lens for its magnification. */
export interface MagnifyingLens {
  readonly frontPowerD: number;
  readonly centreThicknessMm: number;
  readonly index: number;
  readonly power: SpheroCylinder;
  /** Vertex distance plus about 3 mm (see CORNEA_TO_ENTRANCE_PUPIL_MM). */
  readonly backVertexToEntrancePupilMm: number;
}

/** Magnification as factors (1 = none). */
export interface Magnification {
  readonly shape: number;
  /** Power factor in the meridian along the axis of the order. */
  readonly alongAxis: number;
  /** Power factor in the meridian across the axis. */
  readonly acrossAxis: number;
  /** Whole magnification of the mean power: shape times the power factor of the spherical equivalent. */
  readonly total: number;
}

/** Shape factor 1/(1 - (t/n) F1). Throws a RangeError where light would focus inside the lens. */
export function shapeFactor(frontPowerD: number, centreThicknessMm: number, index: number): number {
  within('refractive index', index, 1, 5, '');
  within('centre thickness', centreThicknessMm, 0, Infinity, 'mm');
  return factor(frontPowerD, centreThicknessMm / index, 'thickness');
}

/** Power factor 1/(1 - d F), d in mm to the entrance pupil. Throws a RangeError where the pupil lies at the focus. */
export function powerFactor(backVertexPowerD: number, backVertexToEntrancePupilMm: number): number {
  return factor(backVertexPowerD, backVertexToEntrancePupilMm, 'distance to the entrance pupil');
}

/** Spectacle magnification of a lens in position. Throws a RangeError as its factors do. */
export function spectacleMagnification(lens: MagnifyingLens): Magnification {
  const shape = shapeFactor(lens.frontPowerD, lens.centreThicknessMm, lens.index);
  const { sphereD, cylinderD } = lens.power;
  const at = (powerD: number) => powerFactor(powerD, lens.backVertexToEntrancePupilMm);
  return {
    shape,
    alongAxis: at(sphereD),
    acrossAxis: at(sphereD + cylinderD),
    total: shape * at(sphereD + cylinderD / 2),
  };
}

/** How much larger the right eye's image is than the left's, percent; negative when smaller. Of the mean powers. */
export const magnificationDifferencePercent = (right: Magnification, left: Magnification): number =>
  100 * (right.total / left.total - 1);

function factor(powerD: number, distanceMm: number, name: string): number {
  within('power', powerD, -Infinity, Infinity, 'D');
  within(name, distanceMm, 0, Infinity, 'mm');
  const share = 1 - (distanceMm / 1000) * powerD;
  if (share <= 0) {
    throw new RangeError(
      `${name}: ${distanceMm.toFixed(2)} mm reaches the focus of ${powerD} D, expected a shorter distance.`,
    );
  }
  return 1 / share;
}
