import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FinishedLens, finishLens } from '../../src/optics/finishedLens.ts';
import type { LensToMake } from '../../src/optics/lensToMake.ts';
import { placeLens, powerAlongRay, traceToEye } from '../../src/optics/lensTrace.ts';
import { areaMm2, inside, mirror } from '../../src/optics/outline.ts';
import { toPowerMatrix } from '../../src/optics/powerMatrix.ts';
import { backSag, frontSag } from '../../src/optics/surface.ts';
import { backVertexPower, powerOfRadius } from '../../src/optics/surfacePower.ts';
import { thicknessOver } from '../../src/optics/thicknessMap.ts';
import { unit } from '../../src/optics/vector3.ts';
import { order, ring, shape, sphere, usualLens } from './frames.ts';
import { expectNear } from './near.ts';
import { axisDeg, index, power, prism, real, sphereD } from './realistic.ts';

/** Worn without tilt or wrap. */
const STRAIGHT = { eye: 'right', pantoscopicTiltDeg: 0, faceFormDeg: 0 } as const;

function made(lens: LensToMake): FinishedLens {
  const result = finishLens(lens);
  if (!result.ok) throw new Error(`no lens: ${JSON.stringify(result)}`);
  return result.lens;
}

/** The least thickness on a fine grid over the face, mm. */
function thinnestOnGrid(lens: LensToMake, finished: FinishedLens): number {
  const thickness = thicknessOver(lens, finished);
  let least = Number.POSITIVE_INFINITY;
  for (let xMm = -32; xMm <= 32; xMm += 1)
    for (let yMm = -32; yMm <= 32; yMm += 1)
      if (inside(lens.outline, { xMm, yMm })) least = Math.min(least, thickness({ xMm, yMm }));
  return least;
}

const limits = (centreMm: number, edgeMm: number) => ({ centreMm, edgeMm, holes: [] });

describe('published and computed thicknesses', () => {
  it('a plano-convex crown of radius 52.3, 40 across, edge 1.0, is 4.98 thick', () => {
    // The Indian Optician, textbook series after Jalie, May 2023, p. 112
    const lens = made(
      order({
        power: sphere(10),
        index: 1.523,
        frontPowerD: 523 / 52.3,
        outline: ring(40),
        limits: limits(1, 1),
      }),
    );
    // Flat at the back but for the thickness: the back vertex power of 10 leaves it 0.33 D hollow.
    const flat = frontSag({ radiusMm: 52.3, conic: 0 }, 400) + 1;
    expectNear(flat, 4.98, 0.005, 'mm');
    expectNear(lens.centreThicknessMm, 4.98 - backSag(lens.back, 20, 0), 0.005, 'mm');
  });

  it.each([
    // Computed from exact sags and the exact back vertex power, real thickness.
    { n: 1.498, minusEdge: 7.396, plusCentre: 6.624 },
    { n: 1.586, minusEdge: 6.389, plusCentre: 5.665 },
    { n: 1.594, minusEdge: 6.315, plusCentre: 5.595 },
    { n: 1.66, minusEdge: 5.784, plusCentre: 5.093 },
    { n: 1.732, minusEdge: 5.329, plusCentre: 4.663 },
  ])(
    '-6.00 is $minusEdge at the edge and +5.00 is $plusCentre in the centre for $n',
    ({ n, minusEdge, plusCentre }) => {
      const minus = made(order({ power: sphere(-6), index: n, frontPowerD: 2, outline: ring(60) }));
      const plus = made(
        order({ power: sphere(5), index: n, frontPowerD: 8, outline: ring(65), limits: limits(1, 1) }),
      );
      for (const mm of minus.edgeMm) expectNear(mm, minusEdge, 0.0006, 'mm');
      expectNear(plus.centreThicknessMm, plusCentre, 0.0006, 'mm');
      expect([minus.governedBy, plus.governedBy]).toEqual(['centre', 'edge']);
    },
  );
});

describe('what governs the thickness', () => {
  it('is the thin edge of a plus lens, opposite its decentration', () => {
    const lens = made(order({ power: sphere(4), frontPowerD: 8, reference: { xMm: 4, yMm: 0 } }));
    expect(lens.governedBy).toBe('edge');
    expect(lens.governedAt.xMm).toBeCloseTo(-25, 6);
    expect(lens.thinnest).toEqual({ mm: expect.closeTo(1, 9), atDeg: 180 });
  });

  it('is the edge in the plus meridian of a low mixed lens', () => {
    const lens = made(order({ power: { sphereD: 1, cylinderD: -3, axisDeg: 180 }, frontPowerD: 6 }));
    expect(lens.governedBy).toBe('edge');
    expect(Math.abs(lens.governedAt.yMm)).toBeLessThan(1e-6);
  });

  it('is a hole where it asks for more than the edge', () => {
    const hole = { xMm: 21, yMm: 3, diameterMm: 1.4, leastMm: 2 };
    const lens = order({
      power: sphere(3),
      frontPowerD: 8,
      limits: { centreMm: 1.5, edgeMm: 1, holes: [hole] },
    });
    const { governedBy, governedAt, centreThicknessMm } = made(lens);
    expect(governedBy).toBe('hole');
    expect(governedAt).toEqual({ xMm: 21, yMm: 3 });
    expect(centreThicknessMm).toBeGreaterThan(
      made(order({ power: sphere(3), frontPowerD: 8 })).centreThicknessMm,
    );
    // The hole's rim towards the edge is its thinnest place.
    const rim = Math.hypot(21, 3) + 0.7;
    const [x, y] = [(21 * rim) / Math.hypot(21, 3), (3 * rim) / Math.hypot(21, 3)];
    expectNear(thicknessOver(lens, made(lens))({ xMm: x, yMm: y }), 2, 0.02, 'mm');
  });

  it('is the optical centre of a minus lens with prism: the lens is that decentred without prism', () => {
    // By Prentice, 2 base up at -4.00 puts the optical centre 5 mm below the reference point.
    const withPrism = made(order({ power: sphere(-4), prism: { x: 0, y: 2 }, limits: limits(2, 1) }));
    const decentred = made(
      order({ power: sphere(-4), reference: { xMm: 0, yMm: -5 }, limits: limits(2, 1) }),
    );
    expect(withPrism.governedBy).toBe('centre');
    expectNear(withPrism.governedAt.yMm, -5, 0.1, 'mm');
    expectNear(withPrism.centreThicknessMm, 2.1, 0.01, 'mm');
    // Not the same lens to the last digit: here the front is square to the axis at another place.
    expectNear(withPrism.thickest.mm, decentred.thickest.mm, 0.15, 'mm');
    expectNear(withPrism.thinnest.mm, decentred.thinnest.mm, 0.05, 'mm');
  });

  it('is the thicker of two lenses where each thickness asks for the other: no limit is missed', () => {
    // A front of +29 that flattens outwards: which point of the edge is thinnest comes and goes with the thickness.
    const lens = order({
      power: sphere(56.5),
      index: 1.684,
      frontPowerD: 29,
      frontConic: -52.8,
      outline: ring(36),
      reference: { xMm: 0.8, yMm: 7.7 },
      limits: limits(2.2, 3.7),
    });
    const finished = made(lens);
    expect(finished.thinnest.mm).toBeGreaterThan(3.7 - 1e-9);
    expect(finished.centreThicknessMm).toBeGreaterThan(2.2);
    expect(thinnestOnGrid(lens, finished)).toBeGreaterThan(2.2 - 0.02);
  });

  it('is a ring inside a low plus lens whose front flattens outwards', () => {
    const lens = order({
      power: sphere(0.5),
      frontPowerD: 7,
      frontConic: -4,
      outline: ring(60),
      limits: limits(1.5, 1.5),
    });
    const finished = made(lens);
    const least = thinnestOnGrid(lens, finished);
    expect(least).toBeLessThan(finished.thinnest.mm - 0.05);
    expectNear(least, 1.5, 0.01, 'mm');
  });
});

describe('a stock lens of given thickness', () => {
  it('says how far it misses which limit, and where', () => {
    const lens = made(
      order({
        power: sphere(2),
        frontPowerD: 8,
        fixedCentreThicknessMm: 2,
        limits: limits(2.2, 1),
        reference: { xMm: 2, yMm: 0 },
      }),
    );
    expect(lens.governedBy).toBe('blank');
    expect(lens.shortfalls).toEqual([
      { at: 'centre', missingMm: expect.closeTo(0.2, 9), atDeg: 0 },
      { at: 'edge', missingMm: expect.closeTo(1 - lens.thinnest.mm, 9), atDeg: 180 },
    ]);
  });

  it('misses nothing when it is thick enough, as a lens made to its limits does', () => {
    expect(made(order({ power: sphere(-2), fixedCentreThicknessMm: 2 })).shortfalls).toEqual([]);
    expect(made(order({ power: sphere(-2) })).shortfalls).toEqual([]);
  });

  it('has the ordered power at that thickness', () => {
    fc.assert(
      fc.property(usualLens, real(3, 14), (lens, thicknessMm) => {
        const result = finishLens({ ...lens, prism: { x: 0, y: 0 }, fixedCentreThicknessMm: thicknessMm });
        fc.pre(result.ok);
        const { back, centreThicknessMm } = result.lens;
        const { index: n, frontPowerD, power: ordered } = lens;
        const backPowerD =
          -(powerOfRadius(back.generatingRadiusMm, n) + powerOfRadius(back.revolvedRadiusMm, n)) / 2;
        expect(centreThicknessMm).toBe(thicknessMm);
        const meanD = backVertexPower({ frontPowerD, backPowerD, thicknessMm, index: n });
        expectNear(meanD, ordered.sphereD + ordered.cylinderD / 2, 1e-9, 'D');
      }),
    );
  });

  it('is refused where its surfaces meet before the edge', () => {
    const result = finishLens(order({ power: sphere(6), frontPowerD: 10, fixedCentreThicknessMm: 3 }));
    expect(result).toMatchObject({ ok: false, reason: 'surfaces-cross', atDeg: expect.any(Number) });
  });
});

describe('an impossible lens', () => {
  it('is refused with the reach of the surface and what is needed', () => {
    expect(finishLens(order({ power: sphere(-20), frontPowerD: 0, outline: ring(60) }))).toEqual({
      ok: false,
      reason: 'back-does-not-reach',
      reachMm: 25,
      neededMm: expect.closeTo(30, 9),
      atDeg: expect.any(Number),
    });
    expect(finishLens(order({ power: sphere(18), frontPowerD: 20, outline: ring(60) }))).toMatchObject({
      reason: 'front-does-not-reach',
      reachMm: 25,
      neededMm: expect.closeTo(30, 9),
    });
  });

  it('is refused where a surface does not reach a hole', () => {
    const hole = { xMm: 40, yMm: 0, diameterMm: 1.4, leastMm: 2 };
    const holed = order({ power: sphere(-10), frontPowerD: 3, limits: { ...limits(1.5, 1), holes: [hole] } });
    for (const fixedCentreThicknessMm of [null, 2])
      expect(finishLens({ ...holed, fixedCentreThicknessMm })).toMatchObject({
        ok: false,
        reason: 'back-does-not-reach',
        neededMm: 40.7,
        atDeg: 0,
      });
  });

  it.each([
    ['power.sphereD', order({ power: sphere(Number.NaN) }), 'not-a-number'],
    ['index', order({ index: 0.9 }), 'out-of-range'],
    ['frontPowerD', order({ frontPowerD: Number.POSITIVE_INFINITY }), 'not-a-number'],
    ['outline.radiiMm.length', order({ outline: { radiiMm: [20, 20, 20] } }), 'out-of-range'],
    [
      'outline.radiiMm.7',
      order({ outline: { radiiMm: ring(50).radiiMm.map((r, i) => (i === 7 ? -1 : r)) } }),
      'out-of-range',
    ],
    ['fixedCentreThicknessMm', order({ fixedCentreThicknessMm: 0 }), 'out-of-range'],
    [
      'limits.holes.0.leastMm',
      order({ limits: { centreMm: 1, edgeMm: 1, holes: [{ xMm: 0, yMm: 0, diameterMm: 1, leastMm: -1 }] } }),
      'out-of-range',
    ],
    [
      'profile.endYMm',
      order({ profile: { addD: 2, startYMm: 0, endYMm: 0, insetXMm: 0, surface: 'front' } }),
      'out-of-range',
    ],
  ])('names %s when it is wrong', (field, lens, reason) => {
    expect(finishLens(lens)).toMatchObject({ ok: false, reason, field });
  });

  it('over the whole range of prescriptions is a lens with sound figures or an explained refusal', () => {
    const anything = fc.record({
      power,
      prism,
      index,
      frontPowerD: real(0, 12),
      dx: real(-8, 8),
      dy: real(-8, 8),
    });
    const outline = shape('rectangle', 52, 36, 57);
    fc.assert(
      fc.property(anything, ({ dx, dy, ...drawn }) => {
        const result = finishLens(order({ ...drawn, outline, reference: { xMm: dx, yMm: dy } }));
        if (!result.ok) {
          expect(result.reason).toMatch(/does-not-reach/);
          if ('reachMm' in result) expect(result.reachMm).toBeLessThan(result.neededMm);
          return;
        }
        const { lens } = result;
        const figures = [lens.centreThicknessMm, lens.massG, lens.volumeMm3, ...lens.edgeMm];
        expect(figures.every((figure) => Number.isFinite(figure) && figure > 0)).toBe(true);
        expect(lens.thinnest.mm).toBeGreaterThan(1 - 1e-9);
        expect(lens.centreThicknessMm).toBeGreaterThan(1.5 - 1e-9);
      }),
      { numRuns: 300 },
    );
  });
});

describe('laws of the finished lens', () => {
  it('centre thickness + back sag = edge thickness + front sag, at every radius', () => {
    fc.assert(
      fc.property(usualLens, (lens) => {
        const result = finishLens(lens);
        fc.pre(result.ok);
        const { front, back, edgeMm, centreThicknessMm } = result.lens;
        lens.outline.radiiMm.forEach((r, i) => {
          if (i % 30 !== 0) return;
          const x = r * Math.cos((i * Math.PI) / 180) - lens.reference.xMm;
          const y = r * Math.sin((i * Math.PI) / 180) - lens.reference.yMm;
          const sides = [
            centreThicknessMm + backSag(back, x, y),
            (edgeMm[i] ?? 0) + frontSag(front, x * x + y * y),
          ];
          expectNear(sides[0] ?? 0, sides[1] ?? 0, 1e-6, 'mm');
        });
      }),
    );
  });

  it('the back vertex power is the ordered one to 0.001 D at the real thickness', () => {
    fc.assert(
      fc.property(usualLens, (lens) => {
        const result = finishLens(lens);
        fc.pre(result.ok);
        const { back, centreThicknessMm: thicknessMm } = result.lens;
        const { index: n, frontPowerD, power: ordered } = lens;
        const of = (radiusMm: number) =>
          backVertexPower({ frontPowerD, backPowerD: -powerOfRadius(radiusMm, n), thicknessMm, index: n });
        const found = [of(back.generatingRadiusMm), of(back.revolvedRadiusMm)].sort((a, b) => b - a);
        expectNear(found[0] ?? 0, Math.max(ordered.sphereD, ordered.sphereD + ordered.cylinderD), 0.001, 'D');
        expectNear(found[1] ?? 0, Math.min(ordered.sphereD, ordered.sphereD + ordered.cylinderD), 0.001, 'D');
      }),
    );
  });

  it('light square to the front at the reference point leaves bent by the ordered prism, in a ray trace', () => {
    fc.assert(
      fc.property(usualLens, (lens) => {
        const result = finishLens(lens);
        fc.pre(result.ok);
        const { x, y } = lens.prism;
        const toEye = unit([x / 100, y / 100, 1]);
        const ray = traceToEye(placeLens({ ...result.lens, index: lens.index }, STRAIGHT), [0, 0, 0], toEye);
        expectNear(ray?.beforeLens[0] ?? Number.NaN, 0, 1e-9, '');
        expectNear(ray?.beforeLens[1] ?? Number.NaN, 0, 1e-9, '');
      }),
    );
  });

  it('a traced pencil through the optical centre finds the ordered power', () => {
    fc.assert(
      fc.property(usualLens, (lens) => {
        const result = finishLens({ ...lens, prism: { x: 0, y: 0 } });
        fc.pre(result.ok);
        const placed = placeLens({ ...result.lens, index: lens.index }, STRAIGHT);
        const ray = traceToEye(placed, [0, 0, 0], [0, 0, 1]);
        if (ray === null) throw new Error('the axis passes');
        const found = powerAlongRay(placed, ray, 0);
        const ordered = toPowerMatrix(lens.power);
        expectNear(found.xx, ordered.xx, 0.001, 'D');
        expectNear(found.xy, ordered.xy, 0.001, 'D');
        expectNear(found.yy, ordered.yy, 0.001, 'D');
      }),
    );
  });

  it('some place meets its limit exactly and none, inside or at the edge, is below', () => {
    fc.assert(
      fc.property(usualLens, (lens) => {
        const result = finishLens(lens);
        fc.pre(result.ok);
        const { centreThicknessMm, thinnest, governedAt, governedBy } = result.lens;
        expect(centreThicknessMm).toBeGreaterThan(1.5 - 1e-9);
        expect(thinnest.mm).toBeGreaterThan(1 - 1e-9);
        expect(thinnestOnGrid(lens, result.lens)).toBeGreaterThan(1 - 1e-3);
        const there = thicknessOver(lens, result.lens)(governedAt);
        expectNear(there, governedBy === 'centre' ? 1.5 : 1, 1e-3, 'mm');
      }),
      { numRuns: 40 },
    );
  });

  it('the left lens is the mirror image of the right one', () => {
    fc.assert(
      fc.property(usualLens, (right) => {
        const left = {
          ...right,
          power: { ...right.power, axisDeg: 180 - right.power.axisDeg },
          prism: { x: -right.prism.x, y: right.prism.y },
          outline: mirror(right.outline),
          reference: { xMm: -right.reference.xMm, yMm: right.reference.yMm },
        };
        const [a, b] = [finishLens(right), finishLens(left)];
        expect(b.ok).toBe(a.ok);
        if (!a.ok || !b.ok) return;
        expectNear(b.lens.centreThicknessMm, a.lens.centreThicknessMm, 1e-3, 'mm');
        expectNear(b.lens.massG, a.lens.massG, 1e-3, 'g');
        expectNear(b.lens.edgeMm[30] ?? 0, a.lens.edgeMm[150] ?? 1, 1e-3, 'mm');
      }),
    );
  });

  it('a higher index makes no lens thicker, all else equal', () => {
    fc.assert(
      fc.property(usualLens, real(0.01, 0.2), (lens, more) => {
        const [low, high] = [finishLens(lens), finishLens({ ...lens, index: lens.index + more })];
        fc.pre(low.ok && high.ok);
        const greatest = (l: FinishedLens) => Math.max(l.thickest.mm, l.centreThicknessMm);
        expect(greatest(high.lens)).toBeLessThanOrEqual(greatest(low.lens) + 1e-3);
      }),
    );
  });

  it('more prism makes the thickest edge thicker', () => {
    const thickest = (sphereD: number, y: number) =>
      made(
        order({
          power: sphere(sphereD),
          frontPowerD: sphereD > 0 ? 8 : 4,
          prism: { x: 0, y },
          limits: limits(1.5, 1.5),
        }),
      ).thickest.mm;
    fc.assert(
      fc.property(real(-8, 5), real(0, 5), real(0.1, 3), (sphereD, prismUp, more) => {
        expect(thickest(sphereD, prismUp + more)).toBeGreaterThan(thickest(sphereD, prismUp));
      }),
    );
  });

  it('more decentration makes a round lens heavier', () => {
    fc.assert(
      fc.property(sphereD, real(0, 6), real(0.5, 3), (drawn, inwards, more) => {
        fc.pre(Math.abs(drawn) > 1 && Math.abs(drawn) < 9);
        const mass = (xMm: number) =>
          made(order({ power: sphere(drawn), frontPowerD: drawn > 0 ? 9 : 3, reference: { xMm, yMm: 0 } }))
            .massG;
        expect(mass(inwards + more)).toBeGreaterThan(mass(inwards));
      }),
    );
  });

  it('turning axis and outline together changes nothing', () => {
    fc.assert(
      fc.property(axisDeg, fc.nat(359), (axis, turn) => {
        const lens = (deg: number) =>
          made(
            order({
              power: { sphereD: -2, cylinderD: -3, axisDeg: deg > 180 ? deg - 180 : deg },
              frontPowerD: 5,
            }),
          );
        const turned = (axis + turn) % 180;
        const [one, other] = [lens(axis), lens(turned === 0 ? 180 : turned)];
        expectNear(other.edgeMm[turn] ?? 0, one.edgeMm[0] ?? 1, 1e-9, 'mm');
        expectNear(other.volumeMm3, one.volumeMm3, 0.01, 'mm3');
      }),
    );
  });

  it('a plano lens of parallel spheres weighs its area times its thickness', () => {
    // Back radius = front radius - thickness gives power 0 only nearly; the sheet is thinner along z by little.
    const lens = made(
      order({
        power: sphere(0),
        frontPowerD: 0,
        densityGPerCm3: 1.2,
        outline: ring(40),
        limits: limits(2, 1),
      }),
    );
    expectNear(lens.massG, (Math.PI * 400 * 2 * 1.2) / 1000, 1e-9, 'g');
    expectNear(lens.volumeMm3, 2 * areaMm2(ring(40)), 0.2, 'mm3');
  });
});
