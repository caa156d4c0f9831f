import { describe, expect, it } from 'vitest';
import { ANSI_Z80_1_2015 } from '../../../src/optics/tolerance/ansiZ80.ts';
import { checkAdd, checkPower } from '../../../src/optics/tolerance/checkPower.ts';
import { iso21987 } from '../../../src/optics/tolerance/iso21987.ts';
import { LENS_KINDS } from '../../../src/optics/tolerance/table.ts';
import type { SpheroCylinder } from '../../../src/optics/types.ts';
import { rx } from './cases.ts';

const [SINGLE] = LENS_KINDS;
const STRONGEST = ANSI_Z80_1_2015.lenses[SINGLE];
const EACH = iso21987().lenses[SINGLE];

const check = (ordered: SpheroCylinder, measured: SpheroCylinder, table = STRONGEST) => {
  const [power, cylinder, axis] = checkPower({ eye: 'left', ordered, measured }, table, 'text seen');
  if (!power || !cylinder || !axis) throw new Error('expected three items');
  return { power, cylinder, axis };
};

describe('the strongest meridian', () => {
  it('is the one of largest size, whatever its sign', () => {
    expect(check(rx(1, -3, 180), rx(1.1, -3, 180)).power).toMatchObject({ ordered: -2, deviation: 0.1 });
    expect(check(rx(3, -1, 180), rx(3.1, -1.2, 180)).power).toMatchObject({ ordered: 3, deviation: 0.1 });
    expect(check(rx(-1, -1, 180), rx(-1, -1.1, 180)).power).toMatchObject({ ordered: -2, deviation: -0.1 });
  });

  it('is that of the order where the lens has it turned', () => {
    // 5 degrees off: across the axis ordered the lens has -1 - 2 cos² 5 = -2.985.
    expect(check(rx(-1, -2, 90), rx(-1, -2, 95)).power).toMatchObject({
      ordered: -3,
      measured: expect.closeTo(-2.985, 3),
      deviation: 0.02,
      unit: 'D',
      band: { quantity: 'strongest meridian', value: 3, over: null, upTo: 6.5 },
    });
  });

  it('of an evenly mixed power is the one along the axis of the minus form', () => {
    expect(check(rx(1, -2, 90), rx(1.05, -2.15, 90)).power).toMatchObject({ ordered: 1, deviation: 0.05 });
    expect(check(rx(-1, 2, 180), rx(-1.1, 2.15, 180)).power).toMatchObject({ ordered: 1, deviation: 0.05 });
  });

  it('of a sphere is the stronger one of the lens as measured', () => {
    expect(check(rx(0), rx(0.1, -0.05, 20)).power).toMatchObject({ ordered: 0, deviation: 0.1 });
    expect(check(rx(0), rx(-0.05, -0.1, 20)).power).toMatchObject({ ordered: 0, deviation: -0.15 });
    expect(check(rx(-2), rx(-1.9, -0.1, 20)).power).toMatchObject({ ordered: -2, deviation: 0 });
  });
});

describe('each meridian', () => {
  it('is judged by the one further off, either way', () => {
    expect(check(rx(-1, -1, 90), rx(-1.2, -0.9, 90), EACH).power).toMatchObject({
      ordered: -1,
      deviation: -0.2,
    });
    expect(check(rx(-1, -1, 90), rx(-0.8, -1.1, 90), EACH).power).toMatchObject({
      ordered: -1,
      deviation: 0.2,
    });
    expect(check(rx(-1, -1, 90), rx(-1.05, -1.15, 90), EACH).power).toMatchObject({
      ordered: -2,
      deviation: -0.2,
    });
    expect(check(rx(-1, -1, 90), rx(-1.05, -0.75, 90), EACH).power).toMatchObject({
      ordered: -2,
      deviation: 0.2,
    });
  });
});

describe('the cylinder', () => {
  it('says its band', () => {
    const { cylinder, axis } = check(rx(-1, -2.5, 90), rx(-1, -2.5, 90));
    expect(cylinder.band).toEqual({ quantity: 'cylinder', value: 2.5, over: 2, upTo: 4.5 });
    expect(axis.band).toEqual({ quantity: 'cylinder', value: 2.5, over: 1.5, upTo: Infinity });
  });

  it('has its row by the size of the strongest meridian, minus as well as plus', () => {
    expect(check(rx(-7, -0.5, 90), rx(-7, -0.5, 90), EACH).cylinder.limit).toBe(0.12);
    expect(check(rx(2, -0.5, 90), rx(2, -0.5, 90), EACH).cylinder.limit).toBe(0.09);
  });

  it('is taken across less along the axis ordered', () => {
    expect(check(rx(2, -1, 90), rx(2.1, -1.3, 90)).cylinder).toMatchObject({ ordered: -1, deviation: -0.3 });
    expect(check(rx(2, -1, 90), rx(2.1, -1, 180)).cylinder).toMatchObject({ deviation: 2 });
  });
});

describe('the axis', () => {
  it('is held only where cylinder is ordered and found', () => {
    expect(check(rx(-1, -0.12, 90), rx(-1)).axis).toMatchObject({ outcome: 'no limit held', measured: null });
    expect(check(rx(-1), rx(-1, -0.12, 90)).axis).toMatchObject({ outcome: 'no limit held', measured: null });
    expect(check(rx(-1, -1, 90), rx(-1, -1, 92)).axis).toMatchObject({
      eye: 'left',
      measured: 92,
      deviation: 2,
    });
  });
});

describe('the add', () => {
  it('is measured less ordered, and not measured where it is not given', () => {
    const table = ANSI_Z80_1_2015.lenses.progressive;
    expect(checkAdd('right', 2, 1.9, table, 'shop')).toMatchObject({
      deviation: -0.1,
      outcome: 'pass',
      basis: 'shop',
      unit: 'D',
      band: { quantity: 'add', value: 2, over: null, upTo: 4 },
    });
    expect(checkAdd('right', 2, null, table, 'shop')).toMatchObject({
      deviation: null,
      outcome: 'not measured',
    });
  });
});
