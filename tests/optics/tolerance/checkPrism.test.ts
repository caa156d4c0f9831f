import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prismOfMisplacedCentre } from '../../../src/optics/prism.ts';
import { ANSI_Z80_1_2015 } from '../../../src/optics/tolerance/ansiZ80.ts';
import { checkPrism, type MountedLens } from '../../../src/optics/tolerance/checkPrism.ts';
import { iso21987 } from '../../../src/optics/tolerance/iso21987.ts';
import type { LensTolerances } from '../../../src/optics/tolerance/table.ts';
import { expectNear } from '../near.ts';
import { power, prism, real } from '../realistic.ts';
import { rx } from './cases.ts';

const ANSI = ANSI_Z80_1_2015.lenses['single-vision'];
const ISO = iso21987().lenses['single-vision'];
const none = { x: 0, y: 0 };
const place = { xMm: 0, yMm: 0 };

function check(right: MountedLens, left: MountedLens, table: LensTolerances = ANSI) {
  const limits = { horizontal: table.horizontalPrism, vertical: table.verticalPrism };
  const [horizontal, vertical] = checkPrism(right, left, limits, 'text seen');
  if (!horizontal || !vertical) throw new Error('expected two items');
  return { horizontal, vertical };
}

describe('prism of the pair', () => {
  it('adds base in to base in and sets up against up', () => {
    const one = (x: number, y: number) => ({ power: rx(0), ordered: none, measured: { x, y } });
    const { horizontal, vertical } = check(one(0.3, 0.1), one(-0.2, -0.1));
    expect(horizontal).toMatchObject({ item: 'horizontal-prism', deviation: 0.5, outcome: 'pass' });
    expect(vertical).toMatchObject({ item: 'vertical-prism', deviation: 0.2, outcome: 'pass' });
  });

  it('is compared with the prism ordered', () => {
    const right = { power: rx(0), ordered: { x: 2, y: -3 }, measured: { x: 2.1, y: -3.1 } };
    const { horizontal, vertical } = check(right, { power: rx(0), ordered: none, measured: none });
    expect(horizontal).toMatchObject({ ordered: 2, deviation: 0.1 });
    expect(vertical).toMatchObject({ ordered: -3, deviation: -0.1 });
  });

  it('has its limit by the larger prism ordered in that direction, in either eye and with either base', () => {
    const one = (x: number, y: number) => ({ power: rx(0), ordered: { x, y }, measured: { x, y } });
    // Limits by ordered prism: ISO 21987 from memory.
    expect(check(one(-3, 1), one(1, 1), ISO)).toMatchObject({
      horizontal: { limit: 1 },
      vertical: { limit: 0.5 },
    });
    expect(check(one(1, 1), one(1, -3), ISO)).toMatchObject({
      horizontal: { limit: 0.67 },
      vertical: { limit: 0.75 },
    });
  });

  it('is not measured where one eye has neither prism nor place', () => {
    const known = { power: rx(-1), ordered: none, measured: none };
    const unknown = { power: rx(-1), ordered: none };
    expect(check(known, unknown).horizontal).toMatchObject({ measured: null, outcome: 'not measured' });
    expect(check(unknown, known).vertical).toMatchObject({ measured: null, outcome: 'not measured' });
  });

  it('is the same from the place of a centre as from the prism that it makes', () => {
    fc.assert(
      fc.property(power, prism, real(-2, 2), real(-2, 2), (p, ordered, xMm, yMm) => {
        const error = prismOfMisplacedCentre(p, { xMm, yMm });
        const left = { power: rx(0), ordered: none, measured: none };
        const byPlace = check(
          { power: p, ordered, centreFromOrdered: { xMm, yMm } },
          { ...left, centreFromOrdered: place },
        );
        const measured = { x: ordered.x + error.x, y: ordered.y + error.y };
        const byPrism = check({ power: p, ordered, measured }, left);
        for (const direction of ['horizontal', 'vertical'] as const) {
          const [one, other] = [byPlace[direction], byPrism[direction]];
          expect(other.item).toBe(one.item);
          // A lens weak in some meridian does not show its place by prism, nor does its plano fellow move.
          if (one.deviation === null || other.deviation === null) continue;
          if (Math.min(Math.abs(p.sphereD), Math.abs(p.sphereD + p.cylinderD)) < 0.25) continue;
          expectNear(other.deviation, one.deviation, 0.011, one.unit);
        }
      }),
    );
  });
});

describe('place of the reference points', () => {
  it('is limited by the power in that direction of the stronger lens alone', () => {
    // Axis 180: the cylinder acts vertically.
    const toric = { power: rx(-1, -4, 180), ordered: none, centreFromOrdered: place };
    const weak = { power: rx(-1), ordered: none, centreFromOrdered: place };
    expect(check(toric, weak)).toMatchObject({
      horizontal: { item: 'horizontal-prism' },
      vertical: { item: 'vertical-reference-point' },
    });
    const turned = { ...toric, power: rx(-1, -4, 90) };
    expect(check(weak, turned)).toMatchObject({
      horizontal: { item: 'horizontal-reference-point' },
      vertical: { item: 'vertical-prism' },
    });
  });

  it('is the PD error, positive when too wide, and the right height over the left', () => {
    const at = (xMm: number, yMm: number) => ({
      power: rx(6),
      ordered: none,
      centreFromOrdered: { xMm, yMm },
    });
    const { horizontal, vertical } = check(at(-1, 0.5), at(0.75, -0.25));
    expect(horizontal).toMatchObject({ deviation: 1.75, limit: 2.5, outcome: 'pass' });
    expect(vertical).toMatchObject({ deviation: 0.75, limit: 1, outcome: 'pass' });
  });

  it('is found from the excess of the prism over that ordered', () => {
    const right = { power: rx(5), ordered: { x: 1, y: 1 }, measured: { x: 1.5, y: 0.5 } };
    const left = { power: rx(5), ordered: none, measured: none };
    // 0.5 more towards +x and 0.5 less up on a +5.00: the centre stands 1 mm towards +x and 1 mm low.
    const { horizontal, vertical } = check(right, left);
    expect(horizontal).toMatchObject({ deviation: -1 });
    expect(vertical).toMatchObject({ deviation: -1 });
  });

  it('is not measured where one eye is not known', () => {
    const known = { power: rx(6), ordered: none, centreFromOrdered: place };
    expect(check(known, { power: rx(6), ordered: none }).vertical.outcome).toBe('not measured');
    expect(check({ power: rx(6), ordered: none }, known).horizontal.outcome).toBe('not measured');
  });
});
