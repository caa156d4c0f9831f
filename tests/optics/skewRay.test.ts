import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  meet,
  normalAt,
  refract,
  refractWavefront,
  travel,
  type Wavefront,
} from '../../src/optics/skewRay.ts';
import { frontShape } from '../../src/optics/surfaceJet.ts';
import { dot, leastTurn, unit, type Vec3 } from '../../src/optics/vector3.ts';
import { expectNear } from './near.ts';
import { index, real } from './realistic.ts';

const direction = fc.tuple(real(-0.6, 0.6), real(-0.6, 0.6)).map(([x, y]) => unit([x, y, 1]));
const place = real(-15, 15);
const straight = leastTurn([0, 0, 1]);
const sphere = (radiusMm: number) => ({
  shape: frontShape({ radiusMm, conic: 0 }),
  vertex: [0, 0, 0] as Vec3,
  axes: straight,
});

describe('a ray that meets a surface', () => {
  it('meets a sphere at its radius from the centre, with the normal towards the centre', () => {
    fc.assert(
      fc.property(real(60, 300), place, place, direction, (r, x, y, towards) => {
        const surface = sphere(r);
        const hit = meet(surface, [x, y, -5], towards);
        fc.pre(hit !== null);
        const toCentre: Vec3 = [-hit.point[0], -hit.point[1], r - hit.point[2]];
        expectNear(Math.sqrt(dot(toCentre, toCentre)), r, 1e-9, 'mm');
        expectNear(dot(normalAt(surface, hit), unit(toCentre)), 1, 1e-12, '');
      }),
    );
  });

  it('does not meet what it runs beside', () => {
    expect(meet(sphere(20), [30, 0, -5], [0, 0, 1])).toBeNull();
    expect(meet(sphere(20), [0, 0, -5], [1, 0, 0])).toBeNull();
  });
});

describe('refraction', () => {
  it('keeps n times the part along the surface, and the length', () => {
    fc.assert(
      fc.property(direction, direction, index, (ray, normal, n) => {
        const out = refract(ray, normal, 1, n);
        fc.pre(out !== null);
        const part = (v: Vec3): Vec3 => {
          const k = dot(v, normal);
          return [v[0] - k * normal[0], v[1] - k * normal[1], v[2] - k * normal[2]];
        };
        for (const i of [0, 1, 2] as const) expectNear(n * part(out)[i], part(ray)[i], 1e-12, '');
        expectNear(dot(out, out), 1, 1e-12, '');
      }),
    );
  });

  it('is undone by the way back', () => {
    fc.assert(
      fc.property(direction, direction, index, (ray, normal, n) => {
        const inside = refract(ray, normal, 1, n);
        fc.pre(inside !== null);
        const back = refract(inside, normal, n, 1);
        for (const i of [0, 1, 2] as const) expectNear(back?.[i] ?? Number.NaN, ray[i], 1e-9, '');
      }),
    );
  });

  it('is total beyond the critical angle', () => {
    expect(refract(unit([1, 0, 1]), [0, 0, 1], 1.6, 1)).toBeNull();
    expect(refract(unit([0.5, 0, 1]), [0, 0, 1], 1.6, 1)).not.toBeNull();
  });
});

describe('a wavefront', () => {
  const wave = fc
    .record({ aa: real(-0.01, 0.01), ab: real(-0.003, 0.003), bb: real(-0.01, 0.01) })
    .map((w): Wavefront => ({ a: [1, 0, 0], b: [0, 1, 0], ...w }));

  it('travels in two steps as in one, and back again', () => {
    fc.assert(
      fc.property(wave, real(-10, 10), real(-10, 10), (front, s, t) => {
        const twice = travel(travel(front, s), t);
        const once = travel(front, s + t);
        for (const key of ['aa', 'ab', 'bb'] as const) expectNear(twice[key], once[key], 1e-12, '1/mm');
        expectNear(travel(travel(front, s), -s).ab, front.ab, 1e-12, '1/mm');
      }),
    );
  });

  it('from a point spreads as one over the distance', () => {
    const near: Wavefront = { a: [1, 0, 0], b: [0, 1, 0], aa: 1 / 50, ab: 0, bb: 1 / 50 };
    expectNear(travel(near, 50).aa, 1 / 100, 1e-15, '1/mm');
  });

  it('is not changed by a surface between equal indices', () => {
    fc.assert(
      fc.property(wave, place, place, real(60, 300), (front, x, y, r) => {
        const surface = sphere(r);
        const ray: Vec3 = [0, 0, 1];
        const hit = meet(surface, [x, y, -5], ray);
        fc.pre(hit !== null);
        const same = refractWavefront(
          front,
          { surface, hit, before: ray, after: ray, n: 1.5, m: 1.5 },
          front,
        );
        for (const key of ['aa', 'ab', 'bb'] as const) expectNear(same[key], front[key], 1e-12, '1/mm');
      }),
    );
  });

  it('gains (n - 1)/r at the vertex of a convex surface, over the index', () => {
    fc.assert(
      fc.property(real(40, 400), index, (r, n) => {
        const surface = sphere(r);
        const ray: Vec3 = [0, 0, 1];
        const hit = meet(surface, [0, 0, -5], ray);
        fc.pre(hit !== null);
        const across = { a: [1, 0, 0] as Vec3, b: [0, 1, 0] as Vec3 };
        const { aa, ab, bb } = refractWavefront(
          null,
          { surface, hit, before: ray, after: ray, n: 1, m: n },
          across,
        );
        expectNear(aa, -(n - 1) / r / n, 1e-14, '1/mm');
        expectNear(bb, aa, 1e-14, '1/mm');
        expectNear(ab, 0, 1e-14, '1/mm');
      }),
    );
  });
});
