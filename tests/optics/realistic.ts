/** The whole realistic range of what opticians order, as generators of cases. */
import fc from 'fast-check';
import type { SpheroCylinder } from '../../src/optics/types.ts';

const quarters = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarter) => quarter / 4);

/** Sphere -20 to +20 D by 0.25. */
export const sphereD = quarters(-20, 20);
/** TABO axis 1 to 180. */
export const axisDeg = fc.integer({ min: 1, max: 180 });
/** Sphere with a cylinder to 6 D of either sign, by 0.25; axis 180 where there is none. */
export const power: fc.Arbitrary<SpheroCylinder> = fc
  .record({ sphereD, cylinderD: quarters(-6, 6), axisDeg })
  .map((p) => (p.cylinderD === 0 ? { ...p, axisDeg: 180 } : p));
/** Add 0.75 to 3.50 D by 0.25. */
export const addD = quarters(0.75, 3.5);
/** Either eye. */
export const eye = fc.constantFrom('right' as const, 'left' as const);
/** A place on a lens, mm. */
export const pointMm = fc.record({ xMm: real(-30, 30), yMm: real(-25, 25) });
/** A prism of up to 10 each way, prism dioptres, by 0.25. */
export const prism = fc.record({ x: quarters(-10, 10), y: quarters(-10, 10) });
/** How a frame sits. */
export const position = fc.record({ eye, pantoscopicTiltDeg: real(-5, 20), faceFormDeg: real(0, 25) });
/** Indices of lens materials. */
export const index = fc.constantFrom(1.5, 1.523, 1.53, 1.59, 1.6, 1.67, 1.74);

/** Any finite number in a range. */
export function real(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}
