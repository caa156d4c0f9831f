/**
 * Orders that the solid models rebuild: spheres, torics at four axes, prism, decentred, round and shaped outlines,
 * -14 to +12 D, each material of the trade's list (indices nd; densities g/cm3, from memory, Jalie).
 */
import type { LensToMake } from '../../../src/optics/lensToMake.ts';
import { mirror } from '../../../src/optics/outline.ts';
import { fitFamily, type OutlineFamily } from '../../../src/optics/outlineFamily.ts';
import type { Outline } from '../../../src/optics/types.ts';

type Shape = readonly [OutlineFamily, number, number, number] | number;
type Row = readonly [
  name: string,
  power: readonly [number, number, number],
  prism: readonly [number, number],
  material: readonly [number, number],
  frontPowerD: number,
  shape: Shape,
  reference: readonly [number, number],
];

const CDC = [1.498, 1.32] as const;
const GLASS = [1.523, 2.54] as const;
const URETHANE = [1.53, 1.11] as const;
const POLY = [1.586, 1.2] as const;
const THIO160 = [1.594, 1.3] as const;
const THIO167 = [1.66, 1.36] as const;
const EPISULFIDE = [1.732, 1.47] as const;

const ROWS: readonly Row[] = [
  ['sphere, round', [-4, 0, 180], [0, 0], CDC, 4, 25, [0, 0]],
  ['strong minus, round', [-14, 0, 180], [0, 0], EPISULFIDE, 0.5, 22, [0, 0]],
  ['strong plus, round', [12, 0, 180], [0, 0], CDC, 12, 23, [0, 0]],
  ['plano', [0, 0, 180], [0, 0], POLY, 6, ['panto', 48, 42, 50], [2, 2]],
  ['low plus', [0.5, 0, 180], [0, 0], URETHANE, 6.5, ['oval', 50, 34, 51.5], [3, 2]],
  ['toric at 180', [-3.25, -0.75, 180], [0, 0], THIO160, 4.5, ['rectangle', 52, 36, 57], [3.5, 3]],
  ['toric at 90', [-3.25, -2.5, 90], [0, 0], THIO160, 4.5, ['square', 52, 40, 57], [3.5, 3]],
  ['toric at 45', [2.5, -3, 45], [0, 0], URETHANE, 7, ['upswept', 51, 40, 55], [3, 2]],
  ['toric at 135', [4.25, -4, 135], [0, 0], POLY, 8, ['teardrop', 56, 48, 60], [4, 3]],
  ['plus cylinder', [1, 4, 20], [0, 0], GLASS, 8, ['panto', 46, 40, 48], [2, 1]],
  ['mixed cylinder', [2, -4, 170], [0, 0], THIO167, 6, ['rectangle', 53, 33, 56.5], [3, 2]],
  ['strong cylinder', [-6, -6, 60], [0, 0], THIO167, 2, ['panto', 48, 42, 50.5], [3, 2]],
  ['base up', [-4, 0, 180], [0, 3], CDC, 4, ['round', 46, 44, 48], [2, 1]],
  ['base in', [-2.5, -1, 15], [4, 0], POLY, 5, ['rectangle', 50, 36, 55], [3, 2]],
  ['oblique prism, minus', [-4, -3, 30], [4, -5], CDC, 6, ['rectangle', 51, 40, 57], [3, 2]],
  ['oblique prism, plus', [5, -2, 120], [-3, 2], THIO160, 8, ['oval', 50, 36, 52], [3, 2]],
  ['prism alone', [0, 0, 180], [-6, 0], GLASS, 6, ['hexagon', 50, 42, 52], [2, 2]],
  ['strong prism', [-8, -2, 80], [0, -10], THIO167, 2, ['round', 44, 42, 46], [1, 1]],
  ['far decentred', [-5, 0, 180], [0, 0], THIO160, 3, ['square', 58, 44, 63], [9, 5]],
  ['far decentred plus', [5, -1, 75], [0, 0], THIO167, 9, ['square', 54, 42, 59], [8, -4]],
  ['flat front', [-9, -1, 10], [0, 0], EPISULFIDE, 0, ['panto', 48, 42, 50], [2, 2]],
  ['hollow front', [-12, 0, 180], [1, 1], THIO167, -2, ['round', 44, 42, 45.5], [1, 1]],
  ['bulging back', [11, 1, 150], [2, 1], CDC, 8, ['round', 44, 40, 46], [1, 1]],
  ['flat meridian at the back', [5, 3, 100], [0, 0], THIO160, 5.0837, ['oval', 46, 34, 47], [2, 1]],
  ['wide pilot', [-1.5, -0.5, 95], [0, 0], EPISULFIDE, 5, ['teardrop', 60, 52, 66], [5, 4]],
  ['steep wrap', [-1, 0, 180], [-0.4, 0], POLY, 8, ['upswept', 60, 38, 64], [6, 3]],
];

function outlineOf(shape: Shape): Outline {
  if (typeof shape === 'number') return { radiiMm: new Array(360).fill(shape) };
  const [family, aMm, bMm, edMm] = shape;
  const fit = fitFamily(family, { aMm, bMm, edMm });
  if (!fit.ok) throw new Error(`${family} ${aMm} x ${bMm}, ED ${edMm}: ${fit.reason}`);
  return fit.outline;
}

/** Each order with its name; every second one is the left lens, in the mirrored outline. */
export const ORDERS: readonly { readonly name: string; readonly order: LensToMake }[] = ROWS.map(
  (
    [name, [sphereD, cylinderD, axisDeg], [x, y], [index, densityGPerCm3], frontPowerD, shape, [inMm, upMm]],
    i,
  ) => {
    const left = i % 2 === 1;
    const outline = outlineOf(shape);
    return {
      name: `${name}: ${sphereD}/${cylinderD}x${axisDeg}, n ${index}, front ${frontPowerD}`,
      order: {
        power: { sphereD, cylinderD, axisDeg },
        prism: { x: left ? -x : x, y },
        index,
        densityGPerCm3,
        frontPowerD,
        frontConic: 0,
        outline: left ? mirror(outline) : outline,
        reference: { xMm: left ? -inMm : inMm, yMm: upMm },
        limits: { centreMm: 1.5, edgeMm: 1, holes: [] },
        fixedCentreThicknessMm: null,
        profile: null,
      },
    };
  },
);
