/** Outlines and orders over the realistic range, for laws; and the plain order that tests change one thing of. */
import fc from 'fast-check';
import { chooseBaseCurve } from '../../src/optics/baseCurve.ts';
import type { LensToMake } from '../../src/optics/lensToMake.ts';
import { fitFamily, OUTLINE_FAMILIES, type OutlineFamily } from '../../src/optics/outlineFamily.ts';
import type { Outline } from '../../src/optics/types.ts';
import { index, real } from './realistic.ts';

/** A round lens of this diameter, mm. */
export const ring = (diameterMm: number, count = 360): Outline => ({
  radiiMm: new Array<number>(count).fill(diameterMm / 2),
});

/** A family's outline; the size is known to be one it has. */
export function shape(family: OutlineFamily, aMm: number, bMm: number, edMm: number): Outline {
  const fit = fitFamily(family, { aMm, bMm, edMm });
  if (!fit.ok) throw new Error(`${family} ${aMm} x ${bMm}, ED ${edMm}: ${fit.reason}`);
  return fit.outline;
}

const SQUARENESS = [0.05, 0.35, 0.65];

/** Shapes of 50 mm width, each made when it is first drawn. */
const made = new Map<string, Outline>();

function drawn(family: OutlineFamily, heightMm: number, squareness: number): Outline {
  const key = `${family} ${heightMm} ${squareness}`;
  const known = made.get(key);
  if (known) return known;
  const refused = fitFamily(family, { aMm: 50, bMm: heightMm, edMm: 1 });
  if (refused.ok) throw new Error('no shape has an ED of 1 mm');
  const { leastEdMm, mostEdMm } = refused;
  const outline = shape(family, 50, heightMm, leastEdMm + squareness * (mostEdMm - leastEdMm));
  made.set(key, outline);
  return outline;
}

/** Real frames: A 40 to 60, not higher than wide, any family from round to square. */
export const outline: fc.Arbitrary<Outline> = fc
  .record({
    family: fc.constantFrom(...OUTLINE_FAMILIES),
    heightMm: fc.constantFrom(32, 39, 46),
    squareness: fc.constantFrom(...SQUARENESS),
    scale: real(0.8, 1.2),
  })
  .map(({ family, heightMm, squareness, scale }) => ({
    radiiMm: drawn(family, heightMm, squareness).radiiMm.map((r) => r * scale),
  }));

/** Spheres, thin in the middle, in a round outline: change what the test is about. */
export function order(changes: Partial<LensToMake>): LensToMake {
  return {
    power: { sphereD: 0, cylinderD: 0, axisDeg: 180 },
    prism: { x: 0, y: 0 },
    index: 1.5,
    densityGPerCm3: 1.32,
    frontPowerD: 4,
    frontConic: 0,
    outline: ring(50),
    reference: { xMm: 0, yMm: 0 },
    limits: { centreMm: 1.5, edgeMm: 1, holes: [] },
    fixedCentreThicknessMm: null,
    profile: null,
    ...changes,
  };
}

/** A sphere as a power. */
export const sphere = (sphereD: number) => ({ sphereD, cylinderD: 0, axisDeg: 180 });

const quarters = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((q) => q / 4);

/** Lenses as they are sold: -10 to +8 D, cylinder to -4, little prism, front by Vogel's rule, decentred inwards. */
export const usualLens: fc.Arbitrary<LensToMake> = fc
  .record({
    power: fc.record({
      sphereD: quarters(-10, 8),
      cylinderD: quarters(-4, 0),
      axisDeg: fc.integer({ min: 1, max: 180 }),
    }),
    prism: fc.record({ x: quarters(-3, 3), y: quarters(-3, 3) }),
    index,
    outline,
    reference: fc.record({ xMm: real(0, 6), yMm: real(-3, 5) }),
  })
  .map((drawn) => {
    const chosen = chooseBaseCurve({
      offeredD: [0.5, 2, 4, 6, 8, 10],
      right: drawn.power,
      left: null,
      index: drawn.index,
      frameCurveD: null,
    });
    return order({ ...drawn, frontPowerD: chosen.ok ? (chosen.right?.baseCurveD ?? 4) : 4 });
  });
