/**
 * Powers and prism as textbooks set them: every exercise from memory of its kind, its figures worked by hand beside it.
 */
import { describe, expect, it } from 'vitest';
import { readEye } from '../../src/optics/notation/readPrescription.ts';
import {
  addPowers,
  sphericalEquivalentD,
  toMinusCylinder,
  toPlusCylinder,
} from '../../src/optics/prescription.ts';
import {
  addPrisms,
  decentrationForPrism,
  prenticePrism,
  prismOfMisplacedCentre,
} from '../../src/optics/prism.ts';
import { pairPrism, prismFromBase, prismToPolar, resolvePrism } from '../../src/optics/prismBase.ts';
import { readingImbalance } from '../../src/optics/readingImbalance.ts';
import { toolReadingD, truePowerD } from '../../src/optics/toolIndex.ts';
import type { Eye, SpheroCylinder } from '../../src/optics/types.ts';
import { atCornea, atWornVertex } from '../../src/optics/vertex.ts';
import { expectNear } from '../optics/near.ts';

/** A power as a dispenser writes it. */
function rx(text: string): SpheroCylinder {
  const read = readEye(text);
  if (!read.ok || read.value.power === null) throw new Error(`${text} is no power`);
  return read.value.power;
}

function expectPower(actual: SpheroCylinder, expected: string, toleranceD: number): void {
  const wanted = rx(expected);
  expectNear(actual.sphereD, wanted.sphereD, toleranceD, 'D');
  expectNear(actual.cylinderD, wanted.cylinderD, toleranceD, 'D');
  expectNear(actual.axisDeg, wanted.axisDeg, 0.5, 'degrees');
}

function expectResolved(
  eye: Eye,
  prism: { x: number; y: number },
  expected: readonly [number, string][],
): void {
  const { horizontal, vertical } = resolvePrism(eye, prism);
  for (const [amount, base] of expected) {
    const part = base === 'in' || base === 'out' ? horizontal : vertical;
    expectNear(part.amount, amount, 0.006, 'prism dioptres');
    if (amount > 0) expect(part.base).toBe(base);
  }
}

describe('the sphere and the cylinder', () => {
  it.each([
    // From memory. S + C, -C, axis turned by 90.
    ['+1.00 -2.00 x 180', '-1.00 +2.00 x 90'],
    ['-3.00 -1.50 x 20', '-4.50 +1.50 x 110'],
    ['plano -0.75 x 95', '-0.75 +0.75 x 5'],
    ['+2.25 -2.25 x 90', 'plano +2.25 x 180'],
  ])('%s transposes to %s and back', (minus, plus) => {
    expect(toPlusCylinder(rx(minus))).toEqual(rx(plus));
    expect(toMinusCylinder(rx(plus))).toEqual(rx(minus));
  });

  it.each([
    // From memory. S + C/2.
    ['-3.00 -1.50 x 20', -3.75],
    ['+4.00 -2.00 x 90', 3],
    ['plano +1.00 x 45', 0.5],
  ])('%s has the spherical equivalent %d', (text, meanD) => {
    expect(sphericalEquivalentD(rx(text))).toBe(meanD);
  });

  it.each([
    // From memory. Equal cylinders 30 apart: C = 3 sqrt(2 + 2 cos 60) = 5.196 on the axis between, S = (6 - C)/2.
    ['plano +3.00 x 30', 'plano +3.00 x 60', '+0.40 +5.20 x 45'],
    // Crossed at right angles, equal: a sphere.
    ['plano -1.00 x 90', 'plano -1.00 x 180', '-1.00 DS'],
    // On one axis they add.
    ['+1.00 +0.50 x 75', '-2.00 +0.25 x 75', '-1.00 +0.75 x 75'],
    // 45 apart, 1 and 1: C = sqrt 2, M 1, S = 1 - 0.707, halfway.
    ['plano +1.00 x 90', 'plano +1.00 x 135', '+0.29 +1.41 x 112'],
  ])('%s with %s makes %s', (one, other, sum) => {
    expectPower(toPlusCylinder(addPowers(rx(one), rx(other))), sum, 0.006);
  });
});

describe('the vertex distance', () => {
  it.each([
    // From memory. F/(1 - dF): -14/1.196, 10/0.87, -5/1.075.
    ['-14.00', 14, -11.71],
    ['+10.00', 13, 11.49],
    ['-5.00', 15, -4.65],
  ])('%s at %d mm is %d at the cornea', (text, vertexMm, corneaD) => {
    expectNear(atCornea(rx(text), vertexMm).sphereD, corneaD, 0.006, 'D');
  });

  it('+12.00 tested at 10 mm and worn at 14 mm acts as prescribed at +11.45', () => {
    // From memory. Moved away by 4 mm: 12/(1 + 0.004 x 12).
    expectNear(atWornVertex(rx('+12.00'), 10, 14).sphereD, 11.45, 0.006, 'D');
  });

  it('-10.00 -2.00 x 180 at 12 mm is -8.93 -1.56 x 180 at the cornea', () => {
    // From memory. -10/1.12 = -8.929; -12/1.144 = -10.490: the difference is the cylinder.
    expectPower(atCornea(rx('-10.00 -2.00 x 180'), 12), '-8.93 -1.56 x 180', 0.006);
  });
});

describe('prism', () => {
  it.each([
    // From memory. 3-4-5 and equal sides; the 360-degree notation goes counter-clockwise from the viewer's right.
    ['right', 4, 'in', 3, 'up', 5, 36.87],
    ['left', 4, 'in', 3, 'up', 5, 143.13],
    ['right', 3, 'out', 4, 'down', 5, 233.13],
    ['left', 2, 'out', 2, 'up', 2.83, 45],
  ] as const)(
    'of the %s eye, %d base %s with %d base %s, is %d at %d',
    (eye, h, hBase, v, vBase, amount, deg) => {
      const sum = addPrisms(
        prismFromBase(eye, { amount: h, base: hBase }),
        prismFromBase(eye, { amount: v, base: vBase }),
      );
      expectNear(prismToPolar(sum).amount, amount, 0.005, 'prism dioptres');
      expectNear(prismToPolar(sum).baseDeg, deg, 0.005, 'degrees');
    },
  );

  it.each([
    // From memory. 5 cos 30 = 4.33, 5 sin 30 = 2.50.
    ['right', 30, [4.33, 'in'], [2.5, 'up']],
    ['left', 30, [4.33, 'out'], [2.5, 'up']],
    ['right', 210, [4.33, 'out'], [2.5, 'down']],
  ] as const)('of the %s eye, 5 base %d, resolves', (eye, base, horizontal, vertical) => {
    expectResolved(eye, prismFromBase(eye, { amount: 5, base }), [[...horizontal], [...vertical]]);
  });

  it.each([
    // From memory. Plus has its base towards its centre, minus away from it, the same before either eye.
    ['-3.00', 'in', 1.5, 'out'],
    ['-3.00', 'out', 1.5, 'in'],
    ['+3.00', 'in', 1.5, 'in'],
    ['+3.00', 'out', 1.5, 'out'],
    // Power along the horizontal: -2.00 -1.00 x 90 has -3.00 there, the same on 180 has -2.00.
    ['-2.00 -1.00 x 90', 'in', 1.5, 'out'],
    ['-2.00 -1.00 x 180', 'in', 1, 'out'],
  ] as const)(
    'of %s with its centre 5 mm %s of the pupil is %d base %s in both eyes',
    (text, to, amount, base) => {
      for (const eye of ['right', 'left'] as const) {
        const { x } = prismFromBase(eye, { amount: 5, base: to });
        const prism = prismOfMisplacedCentre(rx(text), { xMm: x, yMm: 0 });
        expectResolved(eye, prism, [
          [amount, base],
          [0, 'up'],
        ]);
      }
    },
  );

  it.each([
    // From memory, by F r with Fxx = S + C sin²a, Fyy = S + C cos²a, Fxy = -C sin a cos a.
    // F = (3.5 -0.5; -0.5 3.5), r = (0, -1): base (-0.5, 3.5).
    ['right', '+3.00 +1.00 x 45', 0, -10, [0.5, 'out'], [3.5, 'up']],
    // F = (2.75 1.299; 1.299 4.25), r = (-0.3, -0.6): base (1.604, 2.940).
    ['right', '+5.00 -3.00 x 60', -3, -6, [1.6, 'in'], [2.94, 'up']],
    // F = (1 1.732; 1.732 -1), r = (0, -0.8): base (1.386, -0.8), which the left eye meets as base out.
    ['left', '+2.00 -4.00 x 30', 0, -8, [1.39, 'out'], [0.8, 'down']],
  ] as const)(
    'before the %s eye of %s at %d, %d mm keeps its torsional part',
    (eye, text, xMm, yMm, h, v) => {
      expectResolved(eye, prenticePrism(rx(text), { xMm, yMm }), [[...h], [...v]]);
    },
  );

  it('of 3 base up in -4.00 takes a centre 7.5 mm down', () => {
    // From memory. c = 10 P/F.
    const move = decentrationForPrism(rx('-4.00'), { x: 0, y: 3 });
    expectNear(move.ok ? move.value.yMm : Number.NaN, -7.5, 1e-9, 'mm');
  });

  it('of a pair of +4.00 made 4 mm too wide is 1.6 base out in all', () => {
    // From memory. 2 mm each, 0.8 base out each.
    const right = prismOfMisplacedCentre(rx('+4.00'), { xMm: -2, yMm: 0 });
    const left = prismOfMisplacedCentre(rx('+4.00'), { xMm: 2, yMm: 0 });
    expectNear(pairPrism(right, left).baseIn, -1.6, 1e-9, 'prism dioptres');
  });

  it('of R -1.00 and L -4.00 read through 10 mm down is 3 vertically, more base down before the left', () => {
    // From memory. 1.0 base down against 4.0 base down.
    const imbalance = readingImbalance({ power: rx('-1.00') }, { power: rx('-4.00') }, { dropMm: 10 });
    expectNear(imbalance.rightBaseUp, 3, 1e-9, 'prism dioptres');
    expectNear(imbalance.baseIn, 0, 1e-9, 'prism dioptres');
  });
});

describe('a lens clock', () => {
  it('reading +6.00 on index 1.60 sits on +6.79, and that reads +6.00 again', () => {
    // From memory. 6 x 0.6/0.53; r = 530/6 = 88.33 mm.
    expectNear(truePowerD(6, 1.6), 6.79, 0.005, 'D');
    expectNear(toolReadingD(6.7925, 1.6), 6, 0.0005, 'D');
  });
});
