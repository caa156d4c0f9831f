import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { inside } from '../../src/optics/outline.ts';
import { thinningPrism } from '../../src/optics/powerProfile.ts';
import { backFor, radiusOfPower } from '../../src/optics/surfacePower.ts';
import { rise, thicknessField } from '../../src/optics/thicknessField.ts';
import { thicknessOver } from '../../src/optics/thicknessMap.ts';
import { interiorDemands, opticalCentre } from '../../src/optics/thinnestInside.ts';
import { order, outline, sphere } from './frames.ts';
import { expectNear } from './near.ts';
import { index, real } from './realistic.ts';

const fieldOf = (lens: ReturnType<typeof order>) =>
  thicknessField({ radiusMm: radiusOfPower(lens.frontPowerD, lens.index), conic: 0 }, backFor(lens, 2), null);

describe('the optical centre of a lens with prism', () => {
  it('lies where Prentice puts it: P/F cm from the reference point, away from the base', () => {
    fc.assert(
      fc.property(real(-8, -2), real(0.2, 1.5), index, (sphereD, amount, n) => {
        const at = opticalCentre(
          fieldOf(order({ power: sphere(sphereD), index: n, prism: { x: amount, y: 0 } })),
        );
        // Prentice's rule is for thin lenses: within 5 % here.
        const byPrentice = (10 * amount) / sphereD;
        expectNear((at?.xMm ?? Number.NaN) / byPrentice, 1, 0.05, '');
        expectNear(at?.yMm ?? Number.NaN, 0, 1e-6, 'mm');
      }),
    );
  });

  it('is the thinnest place round about', () => {
    fc.assert(
      fc.property(
        real(-8, -2),
        real(-4, 0),
        real(-2, 2),
        real(-2, 2),
        real(0, 6.28),
        (sphereD, cylinderD, x, y, angle) => {
          fc.pre(Math.hypot(x, y) > 0.1);
          const power = { sphereD, cylinderD, axisDeg: 30 };
          const field = fieldOf(order({ power, index: 1.6, prism: { x, y } }));
          const at = opticalCentre(field);
          if (at === null) throw new Error('a minus lens has an optical centre');
          const slope = (dx: number, dy: number) =>
            (rise(field, at.xMm + dx, at.yMm + dy) - rise(field, at.xMm - dx, at.yMm - dy)) / 0.02;
          expectNear(slope(0.01, 0), 0, 2e-6, '');
          expectNear(slope(0, 0.01), 0, 2e-6, '');
          const beside = rise(field, at.xMm + Math.cos(angle), at.yMm + Math.sin(angle));
          expect(beside).toBeGreaterThan(rise(field, at.xMm, at.yMm));
        },
      ),
    );
  });

  it('is no thinnest place of a plus or a mixed lens, nor of one without power', () => {
    for (const power of [sphere(4), sphere(0), { sphereD: 2, cylinderD: -4, axisDeg: 20 }])
      expect(opticalCentre(fieldOf(order({ power, frontPowerD: 8, prism: { x: 1, y: 0 } })))).toBeNull();
  });
});

describe('the demands of the inside', () => {
  it('are none without prism, conic or profile, and none where the optical centre is outside', () => {
    const asked = (changes: Parameters<typeof order>[0]) => {
      const lens = order(changes);
      const demands: Parameters<typeof interiorDemands>[2] = [];
      interiorDemands(lens, fieldOf(lens), demands);
      return demands;
    };
    expect(asked({ power: sphere(-4) })).toEqual([]);
    expect(asked({ power: sphere(-1), prism: { x: 5, y: 0 } })).toEqual([]);
    expect(asked({ power: sphere(-4), prism: { x: 1, y: 0 } })).toMatchObject([
      { by: 'centre', limitMm: 1.5 },
    ]);
    expect(asked({ power: sphere(-4), frontConic: -1 })).toMatchObject([{ by: 'edge', limitMm: 1 }]);
  });

  it('find a hollow wherever it lies beside the reference point, to 0.02 mm', () => {
    fc.assert(
      fc.property(outline, real(-4, 4), real(-4, 4), (frame, xMm, yMm) => {
        // A low plus front that flattens outwards is thinnest on a ring about the reference point.
        const lens = order({
          power: sphere(0.4),
          frontPowerD: 7,
          frontConic: -5,
          outline: frame,
          reference: { xMm, yMm },
        });
        const front = { radiusMm: radiusOfPower(7, 1.5), conic: -5 };
        const field = thicknessField(front, backFor(lens, 2), null);
        const demands: Parameters<typeof interiorDemands>[2] = [];
        interiorDemands(lens, field, demands);
        let least = Number.POSITIVE_INFINITY;
        for (let x = -30; x <= 30; x += 0.75)
          for (let y = -28; y <= 28; y += 0.75)
            if (inside(frame, { xMm: x, yMm: y })) least = Math.min(least, rise(field, x - xMm, y - yMm));
        const [found] = demands;
        expect(1 - (found?.needMm ?? Number.NaN)).toBeLessThan(least + 0.02);
      }),
      { numRuns: 60 },
    );
  });

  it('find the one hollow of such a lens with prism to 0.02 mm, and say where', () => {
    fc.assert(
      fc.property(
        outline,
        fc.record({ xMm: real(-4, 4), yMm: real(-4, 4) }),
        fc.record({ x: real(-0.6, 0.6), y: real(-0.6, 0.6) }),
        fc.constantFrom([1, 1.5] as const, [1.5, 1] as const, [1.2, 1.2] as const),
        (frame, reference, prism, [centreMm, edgeMm]) => {
          const limits = { centreMm, edgeMm, holes: [] };
          const shaped = { frontPowerD: 7, frontConic: -5, outline: frame, reference, limits };
          const lens = order({ power: sphere(0.4), prism, ...shaped });
          const front = { radiusMm: radiusOfPower(7, 1.5), conic: -5 };
          const field = thicknessField(front, backFor(lens, 2), null);
          const riseAt = (xMm: number, yMm: number) => rise(field, xMm - reference.xMm, yMm - reference.yMm);
          const demands: Parameters<typeof interiorDemands>[2] = [];
          interiorDemands(lens, field, demands);
          const found = demands.at(-1);
          if (found === undefined) throw new Error('a flattened front is searched');
          let least = Number.POSITIVE_INFINITY;
          for (let x = -33; x <= 33; x += 0.5)
            for (let y = -30; y <= 30; y += 0.5)
              if (inside(frame, { xMm: x, yMm: y })) least = Math.min(least, riseAt(x, y));
          const limitMm = Math.min(centreMm, edgeMm);
          expect(found).toMatchObject({ by: centreMm <= edgeMm ? 'centre' : 'edge', limitMm });
          expect(inside(frame, found.at)).toBe(true);
          expectNear(riseAt(found.at.xMm, found.at.yMm), limitMm - found.needMm, 1e-9, 'mm');
          expectNear(limitMm - found.needMm, least, 0.02, 'mm');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('hold in a progressive: no place of it is below the lesser limit', () => {
    fc.assert(
      fc.property(
        real(-6, 4),
        real(0.75, 3),
        fc.constantFrom(-1, 0, 0.5),
        outline,
        real(1, 2),
        (sphereD, addD, conic, frame, centreMm) => {
          const lens = order({
            power: sphere(sphereD),
            frontPowerD: sphereD > 0 ? 8 : 5,
            frontConic: conic,
            outline: frame,
            reference: { xMm: 2.5, yMm: 0 },
            prism: thinningPrism(addD),
            limits: { centreMm, edgeMm: 1.2, holes: [] },
            profile: { addD, startYMm: 4, endYMm: -10, insetXMm: 2.5, surface: 'front' },
          });
          const made = finishLens(lens);
          fc.pre(made.ok);
          const thickness = thicknessOver(lens, made.lens);
          let least = Number.POSITIVE_INFINITY;
          for (let xMm = -30; xMm <= 30; xMm += 1.5)
            for (let yMm = -28; yMm <= 28; yMm += 1.5)
              if (inside(frame, { xMm, yMm })) least = Math.min(least, thickness({ xMm, yMm }));
          expect(least).toBeGreaterThan(Math.min(centreMm, 1.2) - 0.01);
          const there = thickness(made.lens.governedAt);
          expectNear(Math.min(Math.abs(there - centreMm), Math.abs(there - 1.2)), 0, 1e-3, 'mm');
        },
      ),
      { numRuns: 60 },
    );
  });
});
