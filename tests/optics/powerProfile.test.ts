import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import {
  addedPowerD,
  additionShare,
  type PowerProfile,
  prepareProfile,
  profileSag,
  thinningPrism,
} from '../../src/optics/powerProfile.ts';
import { order, shape, sphere } from './frames.ts';
import { expectNear } from './near.ts';
import { addD, index, real } from './realistic.ts';

const profile = (changes: Partial<PowerProfile>): PowerProfile => ({
  addD: 2,
  startYMm: 4,
  endYMm: -10,
  insetXMm: 0,
  surface: 'front',
  ...changes,
});

/**
 * The definition by a second quadrature: the corridor line as the differential equation of its own curvature,
 * z'' = k (1 + z'^2)^(3/2), by Runge and Kutta's fourth-order steps; the section by its circle.
 */
function sagByDefinition(p: PowerProfile, base: number, n: number, x: number, y: number): number {
  const k = (at: number) => base + addedPowerD(p, at) / (1000 * (n - 1));
  const bend = (at: number, slope: number, curve: (y: number) => number) =>
    curve(at) * (1 + slope * slope) ** 1.5;
  const line = (curve: (y: number) => number) => {
    let [z, slope] = [0, 0];
    const steps = 400;
    const h = y / steps;
    for (let i = 0; i < steps; i++) {
      const at = i * h;
      const k1 = bend(at, slope, curve);
      const k2 = bend(at + h / 2, slope + (h / 2) * k1, curve);
      const k3 = bend(at + h / 2, slope + (h / 2) * k2, curve);
      const k4 = bend(at + h, slope + h * k3, curve);
      z += h * slope + ((h * h) / 6) * (k1 + k2 + k3);
      slope += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    return { z, slope };
  };
  const section = (curve: (y: number) => number) => {
    const { z, slope } = line(curve);
    const radius = 1 / (curve(y) * Math.hypot(1, slope));
    const from = x - p.insetXMm * additionShare(p, y);
    return z + radius - Math.sqrt(radius * radius - from * from);
  };
  return section(k) - section(() => base);
}

describe('the power along the corridor', () => {
  it('is none above its start, half in the middle, all below its end', () => {
    const p = profile({});
    expect([
      addedPowerD(p, 30),
      addedPowerD(p, 4),
      addedPowerD(p, -3),
      addedPowerD(p, -10),
      addedPowerD(p, -30),
    ]).toEqual([0, 0, 1, 2, 2]);
  });

  it('only grows downwards and has no kink', () => {
    fc.assert(
      fc.property(real(-30, 30), (y) => {
        const p = profile({});
        expect(addedPowerD(p, y - 0.1)).toBeGreaterThanOrEqual(addedPowerD(p, y));
        const bend = addedPowerD(p, y - 0.01) - 2 * addedPowerD(p, y) + addedPowerD(p, y + 0.01);
        expectNear(bend, 0, 1e-5, 'D');
      }),
    );
  });
});

describe('the extra sag of a progressive', () => {
  it('is that of its own definition by a second quadrature', () => {
    fc.assert(
      fc.property(
        addD,
        index,
        real(3, 9),
        real(-4, 4),
        real(-22, 22),
        real(-24, 14),
        (add, n, frontD, insetXMm, x, y) => {
          const p = profile({ addD: add, insetXMm });
          const base = frontD / (1000 * (n - 1));
          expectNear(
            profileSag(prepareProfile(p, base, n), x, y),
            sagByDefinition(p, base, n, x, y),
            1e-4,
            'mm',
          );
        },
      ),
    );
  });

  it('with the whole add everywhere is the difference of two spheres', () => {
    fc.assert(
      fc.property(addD, real(-20, 20), real(-20, 20), (add, x, y) => {
        const everywhere = profile({ addD: add, startYMm: 50, endYMm: 45 });
        const base = 0.01;
        const steep = base + add / 500;
        const sphere = (c: number) => 1 / c - Math.sqrt(1 / (c * c) - x * x - y * y);
        expectNear(
          profileSag(prepareProfile(everywhere, base, 1.5), x, y),
          sphere(steep) - sphere(base),
          1e-5,
          'mm',
        );
      }),
    );
  });

  it('is nothing in the distance zone, apart from what the reference point lies below the start', () => {
    const p = prepareProfile(profile({ startYMm: -2 }), 0.012, 1.5);
    expect(profileSag(p, 15, 12)).toBe(0);
    expect(profileSag(p, 0, 0)).toBe(0);
  });

  it('on the back goes the other way', () => {
    const front = profileSag(prepareProfile(profile({}), 0, 1.5), 4, -15);
    const back = profileSag(prepareProfile(profile({ surface: 'back' }), 0, 1.5), 4, -15);
    expectNear(back, -front, 1e-9, 'mm');
  });

  it('is not a number farther than 50 mm down', () => {
    expect(profileSag(prepareProfile(profile({}), 0.01, 1.5), 0, -51)).toBeNaN();
  });
});

describe('a finished progressive', () => {
  const lens = (add: number, share: number) => {
    const made = finishLens(
      order({
        power: sphere(1),
        frontPowerD: 6,
        outline: shape('panto', 52, 42, 55),
        reference: { xMm: 2, yMm: -1 },
        prism: thinningPrism(add, share),
        profile: profile({ addD: add }),
      }),
    );
    if (!made.ok) throw new Error(made.reason);
    return made.lens;
  };

  it('is thicker in the middle with more add', () => {
    fc.assert(
      fc.property(real(0.75, 3), real(0.1, 0.5), (add, more) => {
        expect(lens(add + more, 0).centreThicknessMm).toBeGreaterThan(lens(add, 0).centreThicknessMm);
      }),
    );
  });

  it('is thinner and lighter with the usual thinning prism than with none', () => {
    const [thinned, plain] = [lens(2.5, 2 / 3), lens(2.5, 0)];
    expect(thinned.massG).toBeLessThan(plain.massG);
    expect(thinned.centreThicknessMm).toBeLessThan(plain.centreThicknessMm);
  });
});

describe('the thinning prism', () => {
  it('is two thirds of the add base down, or another share', () => {
    // Two thirds after Jalie; 0.6 from memory
    expect(thinningPrism(3)).toEqual({ x: 0, y: -2 });
    expectNear(thinningPrism(2, 0.6).y, -1.2, 1e-12, 'prism dioptres');
  });
});
