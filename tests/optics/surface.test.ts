import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backSag, frontSag } from '../../src/optics/surface.ts';
import type { BackSurface } from '../../src/optics/types.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const back = (changes: Partial<BackSurface>): BackSurface => ({
  generatingRadiusMm: 60,
  revolvedRadiusMm: 80,
  generatingMeridianDeg: 0,
  tiltSlopeX: 0,
  tiltSlopeY: 0,
  ...changes,
});

const circleSag = (radius: number, y: number) =>
  radius - Math.sign(radius) * Math.sqrt(radius * radius - y * y);

describe('the sag of a front surface', () => {
  it('of radius 52.3 at semi-aperture 20 is 3.98', () => {
    // The Indian Optician, textbook series after Jalie, May 2023, p. 112
    expectNear(frontSag({ radiusMm: 52.3, conic: 0 }, 400), 3.98, 0.005, 'mm');
  });

  it('is that of the circle, of the parabola at k = -1, and 0 when flat', () => {
    fc.assert(
      fc.property(real(35, 2000), real(0, 34), (radiusMm, r) => {
        expectNear(frontSag({ radiusMm, conic: 0 }, r * r), circleSag(radiusMm, r), 1e-9, 'mm');
        expectNear(frontSag({ radiusMm: -radiusMm, conic: 0 }, r * r), -circleSag(radiusMm, r), 1e-9, 'mm');
        expectNear(frontSag({ radiusMm, conic: -1 }, r * r), (r * r) / (2 * radiusMm), 1e-9, 'mm');
        expect(frontSag({ radiusMm: Number.POSITIVE_INFINITY, conic: 0 }, r * r)).toBe(0);
      }),
    );
  });

  it('lessens as the conic constant falls', () => {
    fc.assert(
      fc.property(real(40, 200), real(5, 30), real(-3, 0.5), (radiusMm, r, conic) => {
        const here = frontSag({ radiusMm, conic }, r * r);
        expect(frontSag({ radiusMm, conic: conic - 0.5 }, r * r)).toBeLessThan(here);
      }),
    );
  });

  it('is not a number where the circle has turned back', () => {
    expect(frontSag({ radiusMm: 20, conic: 0 }, 441)).toBeNaN();
  });
});

describe('the sag of a tyre toroid', () => {
  it('is that of a circle in each principal meridian', () => {
    fc.assert(
      fc.property(
        real(40, 90),
        real(1, 5),
        real(0, 180),
        real(-30, 30),
        (generatingRadiusMm, factor, deg, r) => {
          const revolvedRadiusMm = generatingRadiusMm * factor;
          const surface = back({ generatingRadiusMm, revolvedRadiusMm, generatingMeridianDeg: deg });
          const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
          expectNear(backSag(surface, r * c, r * s), circleSag(generatingRadiusMm, r), 1e-8, 'mm');
          expectNear(backSag(surface, -r * s, r * c), circleSag(revolvedRadiusMm, r), 1e-8, 'mm');
        },
      ),
    );
  });

  it('lies on the turned arc: its distance from the axle is that of the arc', () => {
    fc.assert(
      fc.property(real(-25, 25), real(-25, 25), (u, v) => {
        const w = backSag(back({}), u, v);
        expectNear(Math.hypot(v, 80 - w), 80 - circleSag(60, u), 1e-9, 'mm');
      }),
    );
  });

  it('with equal radii is the sphere, whatever its meridian', () => {
    fc.assert(
      fc.property(real(-22, 22), real(-22, 22), real(0, 180), (x, y, generatingMeridianDeg) => {
        const sphere = back({ revolvedRadiusMm: 60, generatingMeridianDeg });
        expectNear(backSag(sphere, x, y), circleSag(60, Math.hypot(x, y)), 1e-9, 'mm');
      }),
    );
  });

  it('goes over into the cylinder as one radius grows without end', () => {
    const cylinder = back({ revolvedRadiusMm: Number.POSITIVE_INFINITY });
    expectNear(backSag(cylinder, 20, 13), circleSag(60, 20), 1e-9, 'mm');
    expectNear(backSag(back({ revolvedRadiusMm: 1e9 }), 20, 13), circleSag(60, 20), 1e-6, 'mm');
    expectNear(
      backSag(back({ revolvedRadiusMm: 0.999e5 }), 20, 13),
      backSag(back({ revolvedRadiusMm: 1.001e5 }), 20, 13),
      1e-5,
      'mm',
    );
  });

  it('bulging is the hollow one turned over', () => {
    const bulging = back({ generatingRadiusMm: -60, revolvedRadiusMm: -80 });
    expectNear(backSag(bulging, 12, 17), -backSag(back({}), 12, 17), 1e-9, 'mm');
  });

  it('is not a number where an arc has turned back', () => {
    expect(backSag(back({ generatingRadiusMm: 30 }), 31, 0)).toBeNaN();
    expect(backSag(back({ generatingRadiusMm: 30, tiltSlopeX: 0.05 }), 40, 0)).toBeNaN();
  });
});

describe('a tilted back', () => {
  it('of a sphere is the sphere about its moved centre', () => {
    fc.assert(
      fc.property(
        real(40, 200),
        real(-20, 20),
        real(-20, 20),
        real(-0.2, 0.2),
        real(-0.2, 0.2),
        (r, x, y, p, q) => {
          const surface = back({ generatingRadiusMm: r, revolvedRadiusMm: r, tiltSlopeX: p, tiltSlopeY: q });
          const long = Math.hypot(p, q, 1);
          const [cx, cy, cz] = [(-p / long) * r, (-q / long) * r, r / long];
          const inside = r * r - (x - cx) ** 2 - (y - cy) ** 2;
          fc.pre(inside > 4);
          expectNear(backSag(surface, x, y), cz - Math.sqrt(inside), 1e-6, 'mm');
        },
      ),
    );
  });

  it('of a flat surface is the plane', () => {
    const flat = { generatingRadiusMm: Number.POSITIVE_INFINITY, revolvedRadiusMm: Number.POSITIVE_INFINITY };
    expectNear(backSag(back({ ...flat, tiltSlopeX: 0.03, tiltSlopeY: -0.02 }), 20, 10), 0.4, 1e-9, 'mm');
  });

  it('along the tilt is the section circle turned about its vertex', () => {
    fc.assert(
      fc.property(real(-20, 20), real(-0.15, 0.15), (u, slope) => {
        // A point of the arc at the angle t from the vertex, turned by the tilt.
        const t = u / 60;
        const e = Math.atan(slope);
        const [across, deep] = [60 * Math.sin(t), 60 * (1 - Math.cos(t))];
        const x = across * Math.cos(e) - deep * Math.sin(e);
        const z = across * Math.sin(e) + deep * Math.cos(e);
        expectNear(backSag(back({ tiltSlopeX: slope }), x, 0), z, 1e-6, 'mm');
      }),
    );
  });
});
