import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLens } from '../../src/optics/lensTrace.ts';
import { toPowerMatrix } from '../../src/optics/powerMatrix.ts';
import {
  CENTRE_OF_ROTATION_MM,
  gazeBlur,
  gazePower,
  LARGEST_GAZE_DEG,
  SHARP_BLUR_D,
  sharpView,
} from '../../src/optics/sharpView.ts';
import { expectNear } from './near.ts';
import { position, real } from './realistic.ts';
import { type LensOrder, lensOf, usualOrder } from './singleVision.ts';

const straight = { eye: 'right', pantoscopicTiltDeg: 0, faceFormDeg: 0 } as const;
const sphere = (sphereD: number) => ({ sphereD, cylinderD: 0, axisDeg: 180 });
const sight = (order: LensOrder, wear: typeof straight = straight) => ({
  lens: lensOf(order),
  position: wear,
  intended: order.power,
});
const minus4 = (frontD: number): LensOrder => ({ power: sphere(-4), frontD, thicknessMm: 2, index: 1.5 });

/** One row in full: a ray in the plane of the gaze through two spheres, by Coddington's equations. */
function rowByHand(gazeDeg: number): { sagittalD: number; tangentialD: number } {
  const n = 1.5;
  const t = 2;
  const r1 = 500 / 6;
  const r2 = 500 / (4 + 6 / (1 - (0.002 / n) * 6));
  const gaze = (gazeDeg * Math.PI) / 180;
  // Back sphere x² + (z - r2)² = r2² met by x = (27 - z) tan(gaze).
  const m = Math.tan(gaze);
  const z2 = nearRoot(1 + m * m, -54 * m * m - 2 * r2, 729 * m * m);
  const x2 = (27 - z2) * m;
  const lean2 = Math.asin(x2 / r2);
  const air2 = gaze - lean2;
  const glass2 = Math.asin(Math.sin(air2) / n);
  // Front sphere x² + (z + t - r1)² = r1² met by x = x2 + (z2 - z) tan(inside).
  const inside = lean2 + glass2;
  const k = Math.tan(inside);
  const c = x2 + z2 * k;
  const z1 = nearRoot(1 + k * k, -2 * c * k - 2 * (r1 - t), c * c + (r1 - t) ** 2 - r1 * r1);
  const x1 = c - z1 * k;
  const lean1 = Math.asin(x1 / r1);
  const glass1 = inside - lean1;
  const air1 = Math.asin(n * Math.sin(glass1));
  const path = Math.hypot(x1 - x2, z1 - z2);
  const gain1 = (n * Math.cos(glass1) - Math.cos(air1)) / r1;
  const gain2 = (Math.cos(air2) - n * Math.cos(glass2)) / r2;
  const carried = (vergence: number, mm: number, index: number) => vergence / (1 - (mm / index) * vergence);
  const sagittal = carried(gain1, path, n) + gain2;
  const tangential =
    (carried(gain1 / Math.cos(glass1) ** 2, path, n) * Math.cos(glass2) ** 2 + gain2) / Math.cos(air2) ** 2;
  const on = Math.hypot(x2, 27 - z2) - 27;
  return { sagittalD: 1000 * carried(sagittal, on, 1), tangentialD: 1000 * carried(tangential, on, 1) };
}

const nearRoot = (a: number, b: number, c: number) => (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);

describe('the power along a gaze', () => {
  it('is -3.8085 sagittal and -3.7158 tangential in the row worked in full', () => {
    const power = gazePower(placeLens(lensOf(minus4(6)), straight), { angleDeg: 30, directionDeg: 0 });
    const { sagittalD, tangentialD } = rowByHand(30);
    expectNear(sagittalD, -3.8085, 5e-5, 'D');
    expectNear(tangentialD, -3.7158, 5e-5, 'D');
    expectNear(power?.xx ?? Number.NaN, tangentialD, 1e-9, 'D');
    expectNear(power?.yy ?? Number.NaN, sagittalD, 1e-9, 'D');
    expectNear(power?.xy ?? Number.NaN, 0, 1e-9, 'D');
  });

  it('is the same by Coddington for every gaze in the plane', () => {
    fc.assert(
      fc.property(real(0.1, 35), (angleDeg) => {
        const power = gazePower(placeLens(lensOf(minus4(6)), straight), { angleDeg, directionDeg: 90 });
        const { sagittalD, tangentialD } = rowByHand(angleDeg);
        expectNear(power?.yy ?? Number.NaN, tangentialD, 1e-8, 'D');
        expectNear(power?.xx ?? Number.NaN, sagittalD, 1e-8, 'D');
      }),
    );
  });

  it('tends to the ordered power as the gaze goes straight ahead', () => {
    fc.assert(
      fc.property(usualOrder, real(0, 360), (order, directionDeg) => {
        const power = gazePower(placeLens(lensOf(order), straight), { angleDeg: 0.05, directionDeg });
        const ordered = toPowerMatrix(order.power);
        expectNear(power?.xx ?? Number.NaN, ordered.xx, 3e-3, 'D');
        expectNear(power?.xy ?? Number.NaN, ordered.xy, 3e-3, 'D');
        expectNear(power?.yy ?? Number.NaN, ordered.yy, 3e-3, 'D');
      }),
    );
  });
});

describe('the blur of a gaze', () => {
  it('is 0.2423 D in the row worked in full: mean error +0.2378, astigmatism 0.0927', () => {
    const blur = gazeBlur(sight(minus4(6)), { angleDeg: 30, directionDeg: 0 });
    expectNear(blur?.meanErrorD ?? Number.NaN, 0.2378, 5e-5, 'D');
    expectNear(blur?.astigmatismD ?? Number.NaN, 0.0927, 5e-5, 'D');
    expectNear(blur?.blurD ?? Number.NaN, 0.2423, 5e-5, 'D');
  });

  it('depends on nothing but the size of the gaze for a straight spherical lens', () => {
    fc.assert(
      fc.property(real(1, 35), real(0, 360), (angleDeg, directionDeg) => {
        const one = gazeBlur(sight(minus4(4)), { angleDeg, directionDeg });
        const other = gazeBlur(sight(minus4(4)), { angleDeg, directionDeg: 0 });
        expectNear(one?.blurD ?? Number.NaN, other?.blurD ?? Number.NaN, 1e-9, 'D');
      }),
    );
  });

  it('is mirrored between the eyes', () => {
    fc.assert(
      fc.property(usualOrder, position, real(1, 30), real(0, 360), (order, wear, angleDeg, directionDeg) => {
        const mirrored = { ...order, power: { ...order.power, axisDeg: 180 - order.power.axisDeg || 180 } };
        const other = { ...wear, eye: wear.eye === 'right' ? ('left' as const) : ('right' as const) };
        const one = gazeBlur(
          { lens: lensOf(order), position: wear, intended: order.power },
          { angleDeg, directionDeg },
        );
        const two = gazeBlur(
          { lens: lensOf(mirrored), position: other, intended: mirrored.power },
          { angleDeg, directionDeg: 180 - directionDeg },
        );
        fc.pre(one !== null && two !== null);
        expectNear(two.blurD, one.blurD, 1e-7, 'D');
      }),
    );
  });
});

describe('the sharp-view angle', () => {
  it('is 30.39 degrees in the row worked in full, and the blur there is 0.25 D', () => {
    const [first] = sharpView(sight(minus4(6)));
    expectNear(first?.angleDeg ?? Number.NaN, 30.39, 0.005, 'degrees');
    expect(first?.endedBy).toBe('blur');
    const blur = gazeBlur(sight(minus4(6)), { angleDeg: first?.angleDeg ?? 0, directionDeg: 0 });
    expectNear(blur?.blurD ?? Number.NaN, SHARP_BLUR_D, 1e-4, 'D');
  });

  it('is asked in 8 directions, to 35 degrees, about a centre 27 mm behind the lens', () => {
    const views = sharpView(sight(minus4(4)));
    expect(views.map(({ directionDeg }) => directionDeg)).toEqual([0, 45, 90, 135, 180, 225, 270, 315]);
    expect(views.every(({ endedBy }) => endedBy === 'largest gaze')).toBe(true);
    expect([CENTRE_OF_ROTATION_MM, LARGEST_GAZE_DEG]).toEqual([27, 35]);
  });

  it('shrinks as the front is made flatter or steeper than the best form', () => {
    const angle = (frontD: number) => sharpView(sight(minus4(frontD)), 1)[0]?.angleDeg ?? 0;
    const flatter = [3, 2, 1].map(angle);
    const steeper = [4, 5, 6, 8].map(angle);
    expect(flatter).toEqual(flatter.toSorted((a, b) => b - a));
    expect(steeper).toEqual(steeper.toSorted((a, b) => b - a));
    expect(Math.min(...flatter, ...steeper)).toBeLessThan(27);
  });

  it('is nothing where the lens does not give what was intended straight ahead', () => {
    const wrong = { ...sight(minus4(4)), intended: sphere(-4.5) };
    expect(sharpView(wrong).every(({ angleDeg, endedBy }) => angleDeg === 0 && endedBy === 'blur')).toBe(
      true,
    );
  });

  it('ends where the surfaces end', () => {
    // A thin shell of no power whose back is a hemisphere of 10 mm: a gaze of 35 degrees passes beside it.
    const shell = lensOf({ power: sphere(0), frontD: 49.9, thicknessMm: 0.06, index: 1.5 });
    const [view] = sharpView({ lens: shell, position: straight, intended: sphere(0) }, 1);
    expect(view?.endedBy).toBe('no ray');
    expect(view?.angleDeg).toBeLessThan(LARGEST_GAZE_DEG);
    expect(
      gazeBlur({ lens: shell, position: straight, intended: sphere(0) }, { angleDeg: 35, directionDeg: 0 }),
    ).toBeNull();
  });

  it('lies from 0 to 35 degrees, with no more blur than 0.25 D just inside', () => {
    fc.assert(
      fc.property(usualOrder, position, (order, wear) => {
        const line = { lens: lensOf(order), position: wear, intended: order.power };
        for (const { angleDeg, directionDeg } of sharpView(line, 4)) {
          expect(angleDeg >= 0 && angleDeg <= LARGEST_GAZE_DEG).toBe(true);
          if (angleDeg === 0) continue;
          const blur = gazeBlur(line, { angleDeg: angleDeg - 1e-6, directionDeg });
          expect(blur?.blurD ?? Number.NaN).toBeLessThanOrEqual(SHARP_BLUR_D + 1e-4);
        }
      }),
      { numRuns: 40 },
    );
  });
});
