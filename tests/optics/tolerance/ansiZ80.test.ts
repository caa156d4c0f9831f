// Every figure: Quick Reference Guide to ANSI Z80.1-2015, items 1 to 5, unless it says from memory.
import { describe, expect, it } from 'vitest';
import { ANSI_Z80_1_2015 } from '../../../src/optics/tolerance/ansiZ80.ts';
import { inspect } from '../../../src/optics/tolerance/inspect.ts';
import type { LensKind } from '../../../src/optics/tolerance/table.ts';
import { expectItem, item, lens, pair, rx } from './cases.ts';

const ANSI = ANSI_Z80_1_2015;

describe('power in the meridian of highest absolute power', () => {
  it.each<[LensKind, number, number]>([
    ['single-vision', 0.25, 0.13],
    ['single-vision', -6.5, 0.13],
    ['single-vision', -6.75, 0.135],
    ['single-vision', 10, 0.2],
    ['multifocal', 6.5, 0.13],
    ['multifocal', 6.51, 0.1302],
    ['progressive', 0.5, 0.16],
    ['progressive', 8, 0.16],
    ['progressive', -8.25, 0.165],
  ])('of a %s lens of %d D holds %d D', (kind, sphere, limit) => {
    expectItem(ANSI, kind, lens(rx(sphere)), 'power', 'pass', limit);
  });

  it('passes at the limit and fails 0.01 D beyond it', () => {
    expectItem(ANSI, 'single-vision', lens(rx(-4), rx(-4.13)), 'power', 'pass', 0.13);
    expectItem(ANSI, 'single-vision', lens(rx(-4), rx(-4.14)), 'power', 'fail', 0.13);
    expectItem(ANSI, 'single-vision', lens(rx(-4), rx(-3.86)), 'power', 'fail', 0.13);
  });

  it('takes sphere plus cylinder where that is the stronger', () => {
    const inspection = inspect(pair('single-vision', lens(rx(-5, -2, 180), rx(-5.12, -2, 180))), ANSI);
    expect(item(inspection, 'power')).toMatchObject({
      ordered: -7,
      deviation: -0.12,
      limit: 0.14,
      outcome: 'pass',
    });
    expect(item(inspection, 'power').band).toMatchObject({ quantity: 'strongest meridian', over: 6.5 });
  });
});

describe('cylinder', () => {
  it.each<[LensKind, number, number]>([
    ['single-vision', 0, 0.13],
    ['single-vision', -2, 0.13],
    ['single-vision', -2.25, 0.15],
    ['single-vision', -4.5, 0.15],
    ['single-vision', -5, 0.2],
    ['progressive', -2, 0.16],
    ['progressive', -3.5, 0.18],
    ['progressive', -4, 0.2],
  ])('of a %s lens of %d D holds %d D', (kind, cylinder, limit) => {
    expectItem(ANSI, kind, lens(rx(1, cylinder, 30)), 'cylinder', 'pass', limit);
  });

  it('that was not ordered is held as cylinder too', () => {
    expectItem(ANSI, 'single-vision', lens(rx(-2), rx(-2, -0.14, 70)), 'cylinder', 'fail', 0.13);
  });
});

describe('axis', () => {
  it.each([
    [-0.12, 14],
    [-0.25, 14],
    [-0.26, 7],
    [-0.5, 7],
    [-0.51, 5],
    [-0.75, 5],
    [-0.76, 3],
    [-1.5, 3],
    [-1.51, 2],
    [-4, 2],
  ])('of a cylinder of %d D holds %d degrees', (cylinder, limit) => {
    expectItem(
      ANSI,
      'single-vision',
      lens(rx(-1, cylinder, 178), rx(-1, cylinder, 178 + limit - 180)),
      'axis',
      'pass',
      limit,
    );
    const beyond = lens(rx(-1, cylinder, 178), rx(-1, cylinder, 178 + limit + 1 - 180));
    expectItem(ANSI, 'single-vision', beyond, 'axis', 'fail', limit);
  });

  it('under 0.12 D is not held', () => {
    expectItem(
      ANSI,
      'single-vision',
      lens(rx(-1, -0.11, 90), rx(-1, -0.11, 30)),
      'axis',
      'no limit held',
      null,
    );
  });
});

describe('add', () => {
  it.each([
    [4, 0.12],
    [4.25, 0.18],
  ])('of +%d holds %d D', (add, limit) => {
    const one = (measured: number) => ({
      ...lens(rx(1)),
      ordered: { power: rx(1), addD: add },
      measured: { power: rx(1), addD: measured },
    });
    expectItem(ANSI, 'multifocal', one(add + limit), 'add', 'pass', limit);
    expectItem(ANSI, 'progressive', one(add - limit - 0.01), 'add', 'fail', limit);
  });
});

describe('mounted prism', () => {
  const at = (xMm: number, yMm: number) => ({ centreFromOrdered: { xMm, yMm } });

  it('holds 0.33 vertically to 3.375 D, and 1.0 mm between the reference points beyond', () => {
    const weak = inspect(pair('single-vision', lens(rx(-3), rx(-3), at(0, 1)), lens(rx(-3))), ANSI);
    expect(item(weak, 'vertical-prism')).toMatchObject({
      eye: 'both',
      deviation: -0.3,
      limit: 0.33,
      unit: 'prism dioptres',
      outcome: 'pass',
    });
    const off = inspect(pair('single-vision', lens(rx(-3), rx(-3), at(0, 1.2)), lens(rx(-3))), ANSI);
    expect(item(off, 'vertical-prism').outcome).toBe('fail');
    const strong = inspect(pair('single-vision', lens(rx(-6), rx(-6), at(0, 1)), lens(rx(-6))), ANSI);
    expect(item(strong, 'vertical-reference-point')).toMatchObject({
      eye: 'both',
      deviation: 1,
      limit: 1,
      unit: 'mm',
      band: { quantity: 'vertical meridian', value: 6, over: 3.375, upTo: Infinity },
      outcome: 'pass',
    });
    const edge = inspect(pair('single-vision', lens(rx(-3.375))), ANSI);
    expect(item(edge, 'vertical-prism').outcome).toBe('pass');
  });

  it('holds 0.67 horizontally in total to 2.75 D, and the PD to 2.5 mm beyond', () => {
    // 1.2 mm too far apart on each side: 0.6 in together at 2.50 D.
    const wide = (d: number, mm: number) =>
      inspect(pair('single-vision', lens(rx(d), rx(d), at(-mm, 0)), lens(rx(d), rx(d), at(mm, 0))), ANSI);
    expect(item(wide(-2.5, 1.2), 'horizontal-prism')).toMatchObject({
      deviation: 0.6,
      limit: 0.67,
      unit: 'prism dioptres',
      band: { quantity: 'ordered prism', value: 0 },
      outcome: 'pass',
    });
    expect(item(wide(-2.5, 1.4), 'horizontal-prism')).toMatchObject({ deviation: 0.7, outcome: 'fail' });
    expect(item(wide(-8, 1.25), 'horizontal-reference-point')).toMatchObject({
      deviation: 2.5,
      limit: 2.5,
      outcome: 'pass',
    });
    expect(item(wide(-8, 1.3), 'horizontal-reference-point').outcome).toBe('fail');
  });

  it('of progressive lenses holds 0.67 to 3.375 D, from memory 1.0 mm at each reference point beyond', () => {
    const weak = inspect(pair('progressive', lens(rx(3), rx(3), at(2.3, 0)), lens(rx(3))), ANSI);
    expect(item(weak, 'horizontal-prism')).toMatchObject({
      deviation: 0.69,
      limit: 0.67,
      unit: 'prism dioptres',
      outcome: 'fail',
    });
    const strong = inspect(
      pair('progressive', lens(rx(5), rx(5), at(1, 0)), lens(rx(5), rx(5), at(1.1, 0))),
      ANSI,
    );
    const places = strong.items.filter((one) => one.item === 'horizontal-reference-point');
    expect(places).toMatchObject([
      { eye: 'right', outcome: 'pass', basis: 'from memory' },
      { eye: 'left', outcome: 'fail', basis: 'from memory' },
    ]);
    expect(strong.passed).toBeNull();
    expect(inspect(pair('progressive', lens(rx(5), rx(5), at(1.1, 0))), ANSI, true).passed).toBe(false);
  });

  it('finds the place of a strong lens from its prism where only that was measured', () => {
    const one = (y: number) => ({
      ordered: { power: rx(-6) },
      measured: { power: rx(-6), prism: { x: 0, y } },
    });
    // 0.6 base down at the ordered point of a -6.00: its centre stands 1 mm above.
    const inspection = inspect(pair('single-vision', one(-0.6), one(0)), ANSI);
    expect(item(inspection, 'vertical-reference-point')).toMatchObject({ deviation: 1, outcome: 'pass' });
  });

  it('cancels thinning prism that both eyes have alike', () => {
    const thinned = {
      ordered: { power: rx(1), prism: { x: 0, y: 0 } },
      measured: { power: rx(1), prism: { x: 0, y: -1.5 } },
    };
    expect(item(inspect(pair('progressive', thinned), ANSI), 'vertical-prism')).toMatchObject({
      deviation: 0,
      outcome: 'pass',
    });
  });
});

describe('the other items', () => {
  it.each([
    ['multifocal', 'segment-height', 1, 'text seen'],
    ['multifocal', 'segment-height-difference', 1, 'text seen'],
    ['multifocal', 'segment-tilt', 2, 'text seen'],
    ['multifocal', 'segment-separation', 2.5, 'from memory'],
    ['single-vision', 'centre-thickness', 0.3, 'text seen'],
    ['single-vision', 'base-curve', 0.75, 'text seen'],
    ['single-vision', 'warpage', 1, 'text seen'],
    ['single-vision', 'polarising-axis', 3, 'from memory'],
    ['progressive', 'fitting-cross-height', 1, 'from memory'],
    ['progressive', 'fitting-cross-height-difference', 1, 'from memory'],
    ['progressive', 'fitting-cross-horizontal', 1, 'from memory'],
  ] as const)('of a %s lens: %s holds %d, %s', (kind, name, limit, basis) => {
    const at = (measured: number) =>
      item(inspect({ ...pair(kind, lens(rx(1))), placed: { [name]: { ordered: 0, measured } } }, ANSI), name);
    expect(at(limit)).toMatchObject({ outcome: 'pass', limit, basis });
    expect(at(-limit - 0.01)).toMatchObject({ outcome: 'fail' });
  });
});
