import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addPrisms,
  decentrationForPrism,
  NO_PRISM,
  prenticePrism,
  prismAmount,
  prismOfMisplacedCentre,
} from '../../src/optics/prism.ts';
import { pairPrism, resolvePrism } from '../../src/optics/prismBase.ts';
import type { PointMm, SpheroCylinder } from '../../src/optics/types.ts';
import { expectNear } from './near.ts';
import { pointMm, power, prism, real, sphereD } from './realistic.ts';

const rx = (sphere: number, cylinderD = 0, axisDeg = 180): SpheroCylinder => ({
  sphereD: sphere,
  cylinderD,
  axisDeg,
});
const at = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

describe('prism away from the optical centre', () => {
  it.each([
    // The Indian Optician, Nov 2024, p. 139-140: right eye, 11 mm below and 2.5 mm in.
    [rx(6, -3, 140), at(2.5, -11), { horizontal: [2.81, 'out'], vertical: [5.03, 'up'] }],
    // Computed from the matrix form of Prentice's rule.
    [rx(-4, -2, 30), at(2, -8), { horizontal: [1.59, 'in'], vertical: [4.57, 'down'] }],
  ] as const)('of a right lens %o at %o is %o', (lens, point, expected) => {
    const { horizontal, vertical } = resolvePrism('right', prenticePrism(lens, point));
    expectNear(horizontal.amount, expected.horizontal[0], 0.006, 'prism dioptres');
    expect(horizontal.base).toBe(expected.horizontal[1]);
    expectNear(vertical.amount, expected.vertical[0], 0.006, 'prism dioptres');
    expect(vertical.base).toBe(expected.vertical[1]);
  });

  it('of a sphere is its power times the distance in cm, base to the centre for plus, away from it for minus', () => {
    fc.assert(
      fc.property(sphereD, pointMm, (sphere, point) => {
        const { x, y } = prenticePrism(rx(sphere), point);
        expectNear(x, (-sphere * point.xMm) / 10, 1e-9, 'prism dioptres');
        expectNear(y, (-sphere * point.yMm) / 10, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('is none at the centre', () => {
    expect(prenticePrism(rx(-4, -2, 30), at(0, 0))).toEqual(NO_PRISM);
  });

  it('is linear in the place', () => {
    fc.assert(
      fc.property(power, pointMm, pointMm, (p, a, b) => {
        const both = prenticePrism(p, at(a.xMm + b.xMm, a.yMm + b.yMm));
        const sum = addPrisms(prenticePrism(p, a), prenticePrism(p, b));
        expectNear(both.x, sum.x, 1e-9, 'prism dioptres');
        expectNear(both.y, sum.y, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('grows in proportion to the distance along one direction', () => {
    fc.assert(
      fc.property(power, pointMm, real(1, 3), (p, a, k) => {
        const near = prismAmount(prenticePrism(p, a));
        const far = prismAmount(prenticePrism(p, at(k * a.xMm, k * a.yMm)));
        expectNear(far, k * near, 1e-8, 'prism dioptres');
      }),
    );
  });

  it('is mirrored with the lens: what is base in on one eye is base in on the other', () => {
    fc.assert(
      fc.property(power, pointMm, (p, a) => {
        const mirrored = { ...p, axisDeg: 180 - p.axisDeg };
        const right = resolvePrism('right', prenticePrism(p, a));
        const left = resolvePrism('left', prenticePrism(mirrored, at(-a.xMm, a.yMm)));
        expectNear(left.horizontal.amount, right.horizontal.amount, 1e-9, 'prism dioptres');
        expectNear(left.vertical.amount, right.vertical.amount, 1e-9, 'prism dioptres');
        if (right.horizontal.amount > 1e-6) expect(left.horizontal.base).toBe(right.horizontal.base);
      }),
    );
  });
});

describe('decentration for a wanted prism', () => {
  it('of 2 base out on a right +4.00 is 5 mm out', () => {
    // Class notes on decentration, recomputed.
    const move = decentrationForPrism(rx(4), { x: -2, y: 0 });
    if (!move.ok) throw new Error(move.fault.code);
    expectNear(move.value.xMm, -5, 1e-9, 'mm');
    expectNear(move.value.yMm, 0, 1e-9, 'mm');
  });

  it('gives back the prism wanted', () => {
    fc.assert(
      fc.property(power, prism, (p, wanted) => {
        const move = decentrationForPrism(p, wanted);
        if (!move.ok) return;
        const got = prismOfMisplacedCentre(p, move.value);
        expectNear(got.x, wanted.x, 1e-8, 'prism dioptres');
        expectNear(got.y, wanted.y, 1e-8, 'prism dioptres');
      }),
    );
  });

  it('is refused exactly where a meridian without power would have to give prism', () => {
    expect(decentrationForPrism(rx(0), { x: 1, y: 0 })).toEqual({
      ok: false,
      fault: { code: 'no-power-for-prism', meridianDeg: 180, wantedPrism: 1 },
    });
    // No power along 90 only: a horizontal prism can be had, a vertical one cannot.
    expect(decentrationForPrism(rx(0, -2, 90), { x: 1, y: 0 }).ok).toBe(true);
    const refused = decentrationForPrism(rx(0, -2, 90), { x: 1, y: 0.5 });
    if (refused.ok) throw new Error('expected a refusal');
    expect(refused.fault.meridianDeg).toBe(90);
    expectNear(refused.fault.wantedPrism, 0.5, 1e-9, 'prism dioptres');
    // No power along 135: what is wanted there of 1 to the right is cos 45.
    expect(decentrationForPrism(rx(2, -2, 45), { x: 1, y: 0 })).toEqual({
      ok: false,
      fault: {
        code: 'no-power-for-prism',
        meridianDeg: 135,
        wantedPrism: expect.closeTo(Math.SQRT1_2, 12),
      },
    });
    expect(decentrationForPrism(rx(0), NO_PRISM)).toEqual({ ok: true, value: at(0, 0) });
  });
});

describe('a misplaced centre', () => {
  it('of two -5.00 lenses with 66 mm between centres before eyes 62 mm apart gives 2 base in together', () => {
    // Computed by Prentice's rule.
    const right = prismOfMisplacedCentre(rx(-5), at(-2, 0));
    const left = prismOfMisplacedCentre(rx(-5), at(2, 0));
    expectNear(pairPrism(right, left).baseIn, 2, 1e-12, 'prism dioptres');
    expectNear(pairPrism(right, left).rightBaseUp, 0, 1e-12, 'prism dioptres');
  });

  it('of a minus lens too low gives base up', () => {
    const { y } = prismOfMisplacedCentre(rx(-4), at(0, -2));
    expectNear(y, 0.8, 1e-12, 'prism dioptres');
  });
});

describe('compound prism', () => {
  it('is the sum of its vectors, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(prism), (prisms) => {
        const one = addPrisms(...prisms);
        const other = addPrisms(...prisms.toReversed());
        expectNear(one.x, other.x, 1e-9, 'prism dioptres');
        expectNear(one.y, other.y, 1e-9, 'prism dioptres');
      }),
    );
  });
});
