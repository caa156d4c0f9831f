/** Every cell of the tolerance tables at both edges of its band, passed at its limit and failed 0.01 beyond it. */
import { describe, expect, it } from 'vitest';
import { ANSI_Z80_1_2015 } from '../../src/optics/tolerance/ansiZ80.ts';
import { inspect } from '../../src/optics/tolerance/inspect.ts';
import { iso21987 } from '../../src/optics/tolerance/iso21987.ts';
import { NEW_JERSEY } from '../../src/optics/tolerance/newJersey.ts';
import type { LensKind, ToleranceStandard } from '../../src/optics/tolerance/table.ts';
import { expectItem, item, lens, pair, rx } from '../optics/tolerance/cases.ts';

const ANSI = ANSI_Z80_1_2015;
const ISO = iso21987();

/** A limit from the first value to the last, ends included: D, or per cent of the value. */
type Row = readonly [from: number, to: number, limit: number | `${number} %`];

const limitAt = (value: number, limit: Row[2]) =>
  typeof limit === 'number' ? limit : (Number.parseFloat(limit) / 100) * value;

/** The largest hundredth that the limit allows. */
const allowed = (limit: number) => Math.floor(100 * limit + 1e-6) / 100;

function expectPower(standard: ToleranceStandard, kind: LensKind, rows: readonly Row[]): void {
  for (const [from, to, stated] of rows) {
    for (const size of [from, to]) {
      const limit = limitAt(size, stated);
      for (const sign of [1, -1]) {
        const order = rx(sign * size);
        for (const off of [allowed(limit), -allowed(limit)]) {
          expectItem(standard, kind, lens(order, rx(sign * size + off)), 'power', 'pass', limit);
          const beyond = rx(sign * size + off + 0.01 * Math.sign(off));
          expectItem(standard, kind, lens(order, beyond), 'power', 'fail', limit);
        }
      }
    }
  }
}

/** The sphere is the strongest meridian, so that the cylinder (up to twice as strong) never is. */
function expectCylinder(
  standard: ToleranceStandard,
  kind: LensKind,
  strongest: number,
  rows: readonly Row[],
): void {
  for (const [from, to, stated] of rows) {
    for (const size of [from, to].filter((each) => each <= 2 * strongest)) {
      const limit = limitAt(size, stated);
      const order = rx(strongest, -size, 30);
      const at = (off: number) => lens(order, rx(strongest, -size + off, 30));
      expectItem(standard, kind, at(-allowed(limit)), 'cylinder', 'pass', limit);
      expectItem(standard, kind, at(-allowed(limit) - 0.01), 'cylinder', 'fail', limit);
    }
  }
}

function expectAxis(standard: ToleranceStandard, kind: LensKind, rows: readonly Row[]): void {
  for (const [from, to, limit] of rows) {
    for (const size of [from, to]) {
      const at = (turned: number) => lens(rx(-1, -size, 90), rx(-1, -size, 90 + turned));
      expectItem(standard, kind, at(Number(limit)), 'axis', 'pass', Number(limit));
      expectItem(standard, kind, at(-Number(limit) - 1), 'axis', 'fail', Number(limit));
    }
  }
}

// Quick Reference Guide to ANSI Z80.1-2015, items 1 to 5.
describe('ANSI Z80.1-2015', () => {
  it.each(['single-vision', 'multifocal'] as const)('power and cylinder of %s lenses', (kind) => {
    expectPower(ANSI, kind, [
      [0, 6.5, 0.13],
      [6.51, 20, '2 %'],
    ]);
    for (const strongest of [6.5, 6.51, 12])
      expectCylinder(ANSI, kind, strongest, [
        [0.12, 2, 0.13],
        [2.01, 4.5, 0.15],
        [4.51, 8, '4 %'],
      ]);
  });

  it('power and cylinder of progressive lenses', () => {
    expectPower(ANSI, 'progressive', [
      [0, 8, 0.16],
      [8.01, 20, '2 %'],
    ]);
    for (const strongest of [8, 8.01, 12])
      expectCylinder(ANSI, 'progressive', strongest, [
        [0.12, 2, 0.16],
        [2.01, 3.5, 0.18],
        [3.51, 8, '5 %'],
      ]);
  });

  it.each(['single-vision', 'multifocal', 'progressive'] as const)('axis of %s lenses', (kind) => {
    expectAxis(ANSI, kind, [
      [0.12, 0.25, 14],
      [0.26, 0.5, 7],
      [0.51, 0.75, 5],
      [0.76, 1.5, 3],
      [1.51, 6, 2],
    ]);
    expectItem(ANSI, kind, lens(rx(-1, -0.11, 90), rx(-1, -0.11, 10)), 'axis', 'no limit held', null);
  });

  it.each([
    ['multifocal', 0.75, 0.12],
    ['multifocal', 4, 0.12],
    ['multifocal', 4.01, 0.18],
    ['progressive', 4, 0.12],
    ['progressive', 4.01, 0.18],
  ] as const)('add of %s lenses, +%d', (kind, addD, limit) => {
    const at = (off: number) => ({
      ordered: { power: rx(1), addD },
      measured: { power: rx(1), addD: addD + off },
    });
    for (const sign of [1, -1]) {
      expectItem(ANSI, kind, at(sign * limit), 'add', 'pass', limit);
      expectItem(ANSI, kind, at(sign * (limit + 0.01)), 'add', 'fail', limit);
    }
  });

  it.each([
    ['single-vision', 2.75, 'horizontal-prism', 0.67, 'text seen'],
    ['single-vision', 2.76, 'horizontal-reference-point', 2.5, 'text seen'],
    ['single-vision', 3.375, 'vertical-prism', 0.33, 'text seen'],
    ['single-vision', 3.376, 'vertical-reference-point', 1, 'text seen'],
    ['multifocal', 2.75, 'horizontal-prism', 0.67, 'text seen'],
    ['multifocal', 2.76, 'horizontal-reference-point', 2.5, 'text seen'],
    ['multifocal', 3.375, 'vertical-prism', 0.33, 'text seen'],
    ['multifocal', 3.376, 'vertical-reference-point', 1, 'text seen'],
    // From memory; a reprint of the 1999 text has 3.75.
    ['progressive', 3.375, 'horizontal-prism', 0.67, 'from memory'],
    ['progressive', 3.376, 'horizontal-reference-point', 1, 'from memory'],
    ['progressive', 3.375, 'vertical-prism', 0.33, 'text seen'],
    ['progressive', 3.376, 'vertical-reference-point', 1, 'text seen'],
  ] as const)('mounted %s lenses of %d D: %s %d', (kind, sphere, name, limit, basis) => {
    for (const sign of [1, -1]) {
      const found = item(inspect(pair(kind, lens(rx(sign * sphere))), ANSI), name);
      expect(found).toMatchObject({ outcome: 'pass', limit, basis });
    }
  });
});

// ISO 21987:2017, from memory, to be verified against the text.
describe('ISO 21987 from memory', () => {
  it('power in each meridian', () => {
    expectPower(ISO, 'single-vision', [
      [0, 3, 0.12],
      [3.01, 6, 0.12],
      [6.01, 9, 0.12],
      [9.01, 12, 0.18],
      [12.01, 20, 0.25],
      [20.01, 24, 0.37],
    ]);
  });

  it.each([
    [
      [0.25, 3],
      [0.09, 0.12, 0.18, 0.25],
    ],
    [
      [3.01, 6],
      [0.12, 0.12, 0.18, 0.25],
    ],
    [
      [6.01, 9],
      [0.12, 0.18, 0.18, 0.25],
    ],
    [
      [9.01, 12],
      [0.12, 0.18, 0.25, 0.25],
    ],
    [
      [12.01, 20],
      [0.18, 0.25, 0.25, 0.25],
    ],
    [
      [20.01, 24],
      [0.25, 0.25, 0.37, 0.37],
    ],
  ] as const)('cylinder where the highest meridian is %s', (strongest, [a, b, c, d]) => {
    for (const meridian of strongest)
      expectCylinder(ISO, 'multifocal', meridian, [
        [0.12, 0.75, a],
        [0.76, 4, b],
        [4.01, 6, c],
        [6.01, 8, d],
      ]);
  });

  it('axis by either set that is remembered', () => {
    expectAxis(ISO, 'single-vision', [
      [0.125, 0.25, 16],
      [0.26, 0.5, 9],
      [0.51, 0.75, 6],
      [0.76, 1.5, 4],
      [1.51, 2.5, 3],
      [2.51, 6, 2],
    ]);
    expectAxis(iso21987('8980-1:2004'), 'single-vision', [
      [0.12, 0.5, 7],
      [0.51, 0.75, 5],
      [0.76, 1.5, 3],
      [1.51, 6, 2],
    ]);
  });

  it.each([
    [0, 0.67, 0.5],
    [2, 0.67, 0.5],
    [2.01, 1, 0.75],
    [10, 1, 0.75],
    [10.01, 1.25, 1],
  ])('mounted prism where %d is ordered: %d and %d', (amount, horizontal, vertical) => {
    const prism = { x: amount, y: amount };
    const one = { ordered: { power: rx(-1), prism }, measured: { power: rx(-1), prism } };
    const inspection = inspect(pair('single-vision', one), ISO);
    expect(item(inspection, 'horizontal-prism').limit).toBe(horizontal);
    expect(item(inspection, 'vertical-prism').limit).toBe(vertical);
  });
});

// New Jersey Administrative Code 13:35-5.2.
describe('N.J.A.C. 13:35-5.2', () => {
  it.each(['single-vision', 'multifocal', 'progressive'] as const)('%s lenses', (kind) => {
    expectPower(NEW_JERSEY, kind, [
      [0, 6, 0.12],
      [6.25, 12, '2 %'],
      [12.01, 20, 0.25],
    ]);
    expectCylinder(NEW_JERSEY, kind, 6, [[0.12, 6, 0.12]]);
    expectAxis(NEW_JERSEY, kind, [
      [0.12, 0.37, 3],
      [0.5, 1, 2],
      [1.12, 6, 1],
    ]);
  });
});
