/**
 * Whole lenses as textbooks set them: every exercise from memory of its kind, its figures worked by hand beside it.
 */
import { describe, expect, it } from 'vitest';
import { blankNeeded, decentrationMm, ruleOfThumbBlankMm } from '../../src/optics/blank.ts';
import { abbeNumber, LINES_NM, sellmeierIndex } from '../../src/optics/dispersion.ts';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { imageJumpPrism } from '../../src/optics/imageJump.ts';
import type { LensToMake } from '../../src/optics/lensToMake.ts';
import { spectacleMagnification } from '../../src/optics/magnification.ts';
import { martinWorn } from '../../src/optics/martinTilt.ts';
import { nearCentrationMm, nearInsetMm } from '../../src/optics/nearCentration.ts';
import { toPlusCylinder } from '../../src/optics/prescription.ts';
import {
  allReflectionsTransmittance,
  reflectancePerSurface,
  singlePassTransmittance,
  uncoatedFaces,
} from '../../src/optics/reflection.ts';
import { backSag, frontSag } from '../../src/optics/surface.ts';
import { backVertexPower, frontVertexPower, radiusOfPower } from '../../src/optics/surfacePower.ts';
import { combinedTransmittance, opticalDensity } from '../../src/optics/tintStack.ts';
import { order, ring, sphere } from '../optics/frames.ts';
import { expectNear } from '../optics/near.ts';

function made(changes: Partial<LensToMake>) {
  const result = finishLens(order(changes));
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result.lens;
}

describe('vertex powers', () => {
  it.each([
    // From memory. n 1.5, t 8: 10/(1 - 0.05333) - 2 and 10 - 2/(1 + 0.01067).
    [{ frontPowerD: 10, backPowerD: -2, thicknessMm: 8, index: 1.5 }, 8.563, 8.021],
    // Turned round, back and front change places.
    [{ frontPowerD: -2, backPowerD: 10, thicknessMm: 8, index: 1.5 }, 8.021, 8.563],
    // Plano-convex with its flat side to the eye: 8/(1 - 0.006 x 8/1.523) = 8.260 behind, 8.000 in front.
    [{ frontPowerD: 8, backPowerD: 0, thicknessMm: 6, index: 1.523 }, 8.26, 8],
  ])('of %o are %d behind and %d in front', (lens, back, front) => {
    expectNear(backVertexPower(lens), back, 0.0006, 'D');
    expectNear(frontVertexPower(lens), front, 0.0006, 'D');
  });
});

describe('sags', () => {
  it.each([
    // From memory. r - sqrt(r² - y²), r = 1000 (n - 1)/F.
    [5, 1.5, 50, 3.175],
    [8, 1.523, 60, 7.29],
    [2, 1.5, 70, 2.462],
    [10, 1.5, 40, 4.174],
  ])('+%d D, n %d, %d mm across is %d mm deep', (powerD, index, acrossMm, sagMm) => {
    const radiusMm = radiusOfPower(powerD, index);
    expectNear(frontSag({ radiusMm, conic: 0 }, (acrossMm / 2) ** 2), sagMm, 0.0006, 'mm');
    const hollow = { generatingRadiusMm: radiusMm, revolvedRadiusMm: radiusMm, generatingMeridianDeg: 0 };
    expectNear(backSag({ ...hollow, tiltSlopeX: 0, tiltSlopeY: 0 }, acrossMm / 2, 0), sagMm, 0.0006, 'mm');
  });
});

describe('thickness', () => {
  const limits = (centreMm: number, edgeMm: number) => ({ centreMm, edgeMm, holes: [] });

  it('plano-concave -5.00, n 1.5, 50 across, 2.0 in the middle, is 5.175 at the edge', () => {
    // From memory. 2.0 + 3.175.
    const { edgeMm } = made({ power: sphere(-5), frontPowerD: 0, limits: limits(2, 1) });
    for (const mm of edgeMm) expectNear(mm, 5.175, 0.0006, 'mm');
  });

  it('a flat prism of 3, n 1.5, 50 across, differs by 3.0 mm from base to apex, thick at its base', () => {
    // From memory. g = P d/(100 (n - 1)) = 3.00; exact, 50 tan e with tan e = sin d/(n - cos d), 2.996.
    const lens = made({ frontPowerD: 0, prism: { x: 3, y: 0 }, limits: limits(1, 1) });
    expectNear(lens.thickest.mm - lens.thinnest.mm, 2.996, 0.001, 'mm');
    expect([lens.thickest.atDeg, lens.thinnest.atDeg]).toEqual([0, 180]);
    expect(lens.governedBy).toBe('edge');
  });

  it('a plano-cylinder -4.00 x 90, n 1.5, 60 across, is as thin along its axis as in the middle', () => {
    // From memory. Flat front; across the axis r = 125: 2.0 + 125 - sqrt(125² - 30²) = 5.653.
    const power = { sphereD: 0, cylinderD: -4, axisDeg: 90 };
    const { edgeMm } = made({ power, frontPowerD: 0, outline: ring(60), limits: limits(2, 1) });
    expectNear(edgeMm[0] ?? Number.NaN, 5.653, 0.0006, 'mm');
    expectNear(edgeMm[90] ?? Number.NaN, 2, 1e-9, 'mm');
  });

  it('polycarbonate is 14 % thinner than standard plastic, not the 40 % that the trade claims', () => {
    // Computed: -6.00, 60 across: 6.389 against 7.396 mm; +5.00, 65 across: 5.665 against 6.624 mm.
    const edge = (index: number) =>
      made({ power: sphere(-6), index, frontPowerD: 2, outline: ring(60) }).thickest.mm;
    const centre = (index: number) =>
      made({ power: sphere(5), index, frontPowerD: 8, outline: ring(65), limits: limits(1, 1) })
        .centreThicknessMm;
    expectNear(100 * (1 - edge(1.586) / edge(1.498)), 13.6, 0.1, '%');
    expectNear(100 * (1 - centre(1.586) / centre(1.498)), 14.5, 0.1, '%');
  });

  it('a 50 mm disc 2 mm thick of 1.32 g/cm³ weighs 5.18 g', () => {
    // From memory. pi 25² 2 = 3927 mm³.
    expectNear(made({ frontPowerD: 0, limits: limits(2, 1) }).massG, 5.183, 0.001, 'g');
  });
});

describe('blanks', () => {
  it('A 50, DBL 20, PD 60, ED 54 asks for 66', () => {
    // From memory. (70 - 60)/2 = 5 in; 54 + 10 + 2.
    const inwards = decentrationMm({ aMm: 50, dblMm: 20 }, 30);
    expect([inwards, ruleOfThumbBlankMm(54, inwards)]).toEqual([5, 66]);
  });

  it('a PD wider than the frame PD moves the lens outwards by half the difference', () => {
    // From memory. A 46, DBL 16: 62; PD 66.
    expect(decentrationMm({ aMm: 46, dblMm: 16 }, 33)).toBe(-2);
  });

  it('a round 48 with 3 in and 4 up asks for 60', () => {
    // From memory. The whole decentration is 5: 48 + 10 + 2.
    const { neededMm, closestAtDeg } = blankNeeded({ outline: ring(48), reference: { xMm: 3, yMm: 4 } });
    expectNear(neededMm, 60, 0.001, 'mm');
    expectNear(closestAtDeg, 233, 0.5, 'degrees');
  });
});

describe('near vision', () => {
  it('PD 64 converges to 59.95 in the lens plane for 400 mm, 2.0 mm an eye', () => {
    // From memory. 64 x 400/427, centre of rotation 27 mm behind the lens.
    const sight = { workingMm: 400, rotationMm: 27, powerD: 0 };
    expectNear(nearCentrationMm(64, sight), 59.95, 0.005, 'mm');
    expectNear(nearInsetMm(64, sight), 2.02, 0.005, 'mm');
  });

  it('three quarters of a millimetre for each dioptre of demand is near the truth at PD 63', () => {
    // Gerstman's rule, from memory: 2.50 D gives 1.9, 3.00 D 2.25.
    const inset = (workingMm: number) => nearInsetMm(63, { workingMm, rotationMm: 27, powerD: 0 });
    expectNear(inset(400), 1.875, 0.15, 'mm');
    expectNear(inset(1000 / 3), 2.25, 0.15, 'mm');
  });

  it.each([
    // From memory. Add times the distance from the edge to the segment's own centre, in cm.
    ['22 mm round', 2, 11, 2.2],
    ['38 mm round', 2.5, 19, 4.75],
    ['25 mm flat top', 2, 5, 1],
    ['segment with its centre on the line', 3, 0, 0],
  ])('a %s, add +%d, jumps by its distance of %d mm: %d', (_, addD, mm, jump) => {
    expectNear(imageJumpPrism(addD, mm), jump, 1e-9, 'prism dioptres');
  });
});

describe('magnification', () => {
  it.each([
    // From memory. 1/(1 - t F1/n) x 1/(1 - d F): 1.0807 x 1.2195, about a third larger without the eye's own lens.
    ['+12.00', 12, 14, 8, 1.318],
    // 1.0020 x 0.8696: 13 % smaller.
    ['-10.00', -10, 2, 1.5, 0.871],
    // No power: the shape alone, 1/(1 - 0.003 x 6/1.5).
    ['plano', 0, 6, 3, 1.012],
  ])('of %s, 15 mm from the entrance pupil', (_, sphereD, frontPowerD, centreThicknessMm, total) => {
    const lens = { power: sphere(sphereD), frontPowerD, centreThicknessMm, index: 1.5 };
    expectNear(spectacleMagnification({ ...lens, backVertexToEntrancePupilMm: 15 }).total, total, 0.0006, '');
  });
});

describe('tilt', () => {
  it("-8.00 tilted by 12 degrees, n 1.53, is -8.11 -0.37 x 180 by Martin's formula", () => {
    // From memory. sin² 12 = 0.04323: -8 (1 + 0.04323/3.06) = -8.113; times tan² 12 = 0.04518: -0.367.
    const worn = martinWorn(sphere(-8), 12, 180, 1.53);
    expectNear(worn.sphereD, -8.113, 0.0006, 'D');
    expectNear(worn.cylinderD, -0.3665, 0.0006, 'D');
    expectNear(worn.axisDeg, 180, 1e-9, 'degrees');
  });

  it('+10.00 tilted by 15 degrees: the exact sphere is 0.008 D more than by Martin, the cylinder within 0.001 D', () => {
    // Computed by the exact oblique form for a thin lens, n 1.5: 10.2315 and 10.9661; Durham's form of Martin's formula
    // 10.2233 and 10.2233 tan² 15 = 0.7340; another source's 10 tan² 15 is 0.016 D less.
    const worn = toPlusCylinder(martinWorn(sphere(10), 15, 180, 1.5));
    expectNear(10.2315 - worn.sphereD, 0.008, 0.0006, 'D');
    expectNear(10.9661 - 10.2315 - worn.cylinderD, 0.0006, 0.0004, 'D');
    expectNear(worn.cylinderD - 10 * Math.tan(Math.PI / 12) ** 2, 0.016, 0.0005, 'D');
  });

  it('+6.00 wrapped by 20 degrees, n 1.5, gains +0.83 x 90', () => {
    // From memory. sin² 20 = 0.11698: 6 (1 + 0.11698/3) = 6.234; times tan² 20 = 0.13247: +0.826 x 90, which
    // leaves 6.234 vertically and 7.06 horizontally.
    const worn = martinWorn(sphere(6), 20, 90, 1.5);
    expectNear(worn.sphereD, 7.06, 0.0006, 'D');
    expectNear(worn.cylinderD, -0.826, 0.0006, 'D');
    expectNear(worn.axisDeg, 180, 1e-9, 'degrees');
  });
});

describe('light', () => {
  it.each([
    // From memory. ((n - 1)/(n + 1))²: 0.04 for 1.5, 4.30 % for 1.523; 0.96² and 2n/(n² + 1) = 3/3.25.
    [1.5, 4, 92.16, 92.31],
    [1.523, 4.3, 91.59, 91.76],
  ])(
    'index %d reflects %d %% a face and passes %d %% or, with all reflections, %d %%',
    (n, face, once, all) => {
      expectNear(100 * reflectancePerSurface(n), face, 0.006, '%');
      expectNear(100 * singlePassTransmittance(uncoatedFaces(n)), once, 0.006, '%');
      expectNear(100 * allReflectionsTransmittance(uncoatedFaces(n)), all, 0.006, '%');
    },
  );

  it('filters of 50 % and 20 % pass 10 %: densities 0.301 and 0.699 make 1', () => {
    // From memory.
    expectNear(combinedTransmittance([0.5, 0.2]), 0.1, 1e-12, '');
    expectNear(opticalDensity(0.5), 0.301, 0.0005, '');
    expectNear(opticalDensity(0.5) + opticalDensity(0.2), 1, 1e-12, '');
  });

  it('the commonest borosilicate crown has nd 1.5168, ne 1.5187 and an Abbe number of 64.2', () => {
    // Sellmeier coefficients and figures from memory (glass catalogues).
    const terms = [
      { b: 1.03961212, cUm2: 0.00600069867 },
      { b: 0.231792344, cUm2: 0.0200179144 },
      { b: 1.01046945, cUm2: 103.560653 },
    ];
    expectNear(sellmeierIndex(terms, LINES_NM.d), 1.5168, 5e-5, '');
    expectNear(sellmeierIndex(terms, LINES_NM.e), 1.51872, 5e-5, '');
    expectNear(abbeNumber(terms), 64.17, 0.05, '');
  });
});
