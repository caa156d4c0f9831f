import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transpose } from '../../../src/optics/prescription.ts';
import { ANSI_Z80_1_2015 } from '../../../src/optics/tolerance/ansiZ80.ts';
import { type InspectedPair, inspect } from '../../../src/optics/tolerance/inspect.ts';
import { iso21987 } from '../../../src/optics/tolerance/iso21987.ts';
import { NEW_JERSEY } from '../../../src/optics/tolerance/newJersey.ts';
import { LENS_KINDS } from '../../../src/optics/tolerance/table.ts';
import { power, prism, real } from '../realistic.ts';
import { item, lens, pair, rx } from './cases.ts';

const standard = fc.constantFrom(ANSI_Z80_1_2015, iso21987(), NEW_JERSEY);
const kind = fc.constantFrom(...LENS_KINDS);
const inspected: fc.Arbitrary<InspectedPair> = fc
  .record({
    kind,
    right: power,
    left: power,
    wrongR: power,
    wrongL: power,
    prism,
    x: real(-2, 2),
    y: real(-2, 2),
  })
  .map((c) => ({
    kind: c.kind,
    right: {
      ordered: { power: c.right, prism: c.prism },
      measured: { power: c.wrongR, centreFromOrdered: { xMm: c.x, yMm: c.y } },
    },
    left: {
      ordered: { power: c.left },
      measured: { power: c.wrongL, centreFromOrdered: { xMm: 0, yMm: 0 } },
    },
  }));

describe('an inspection', () => {
  it('passes a pair that is exactly as ordered, by any table that holds limits', () => {
    fc.assert(
      fc.property(power, power, prism, kind, standard, (r, l, base, of, table) => {
        const right = {
          ordered: { power: r, prism: base },
          measured: { power: r, prism: base, centreFromOrdered: { xMm: 0, yMm: 0 } },
        };
        const inspection = inspect({ kind: of, right, left: lens(l) }, table, true);
        expect(
          inspection.items.every(({ outcome }) => outcome === 'pass' || outcome === 'no limit held'),
        ).toBe(true);
        if (table.lenses[of].power !== null) expect(inspection.passed).toBe(true);
      }),
    );
  });

  it('is the same whichever sign of cylinder is entered', () => {
    fc.assert(
      fc.property(inspected, standard, (one, table) => {
        const crossed = (side: InspectedPair['right']) =>
          side && {
            ordered: { ...side.ordered, power: transpose(side.ordered.power) },
            measured: { ...side.measured, power: transpose(side.measured.power) },
          };
        const other = inspect({ ...one, right: crossed(one.right), left: crossed(one.left) }, table, true);
        const outcomes = inspect(one, table, true).items.map(
          ({ item: name, outcome }) => `${name} ${outcome}`,
        );
        expect(other.items.map(({ item: name, outcome }) => `${name} ${outcome}`)).toEqual(outcomes);
      }),
    );
  });

  it('fails or passes each judged item by its own deviation and limit, and the pair with its worst', () => {
    fc.assert(
      fc.property(inspected, standard, (one, table) => {
        const { items, passed, decisive } = inspect(one, table, true);
        for (const { outcome, deviation, limit } of items) {
          if (limit === null) expect(outcome).toBe('no limit held');
          else if (deviation === null) expect(outcome).toBe('not measured');
          else expect(outcome).toBe(Math.abs(deviation) <= limit + 1e-9 ? 'pass' : 'fail');
        }
        if (items.some(({ outcome }) => outcome === 'fail')) {
          expect(passed).toBe(false);
          expect(decisive?.outcome).toBe('fail');
        }
      }),
    );
  });

  it('rounds deviations to 0.01 before it judges them', () => {
    expect(
      item(inspect(pair('single-vision', lens(rx(-4), rx(-4.134))), ANSI_Z80_1_2015), 'power'),
    ).toMatchObject({
      deviation: -0.13,
      outcome: 'pass',
    });
    expect(
      item(inspect(pair('single-vision', lens(rx(-4), rx(-4.135))), ANSI_Z80_1_2015), 'power').outcome,
    ).toBe('fail');
  });

  it('takes deviations in the meridians of the order', () => {
    // 5 degrees off axis: the cylinder along the ordered meridians is C cos 10.
    const turned = inspect(pair('single-vision', lens(rx(-1, -2, 90), rx(-1, -2, 95))), ANSI_Z80_1_2015);
    expect(item(turned, 'cylinder')).toMatchObject({ deviation: 0.03, outcome: 'pass' });
    expect(item(turned, 'axis')).toMatchObject({ deviation: 5, limit: 2, outcome: 'fail' });
    expect(turned.decisive).toMatchObject({ item: 'axis', eye: 'right' });
  });

  it('judges a sphere in the meridians of the lens as measured', () => {
    const astigmatic = inspect(pair('single-vision', lens(rx(-4), rx(-4.05, -0.12, 37))), ANSI_Z80_1_2015);
    expect(item(astigmatic, 'power')).toMatchObject({ deviation: -0.17, outcome: 'fail' });
    expect(item(astigmatic, 'cylinder')).toMatchObject({ deviation: -0.12, outcome: 'pass' });
    expect(item(astigmatic, 'axis').outcome).toBe('no limit held');
  });

  it('leaves a pair open while something ordered is not measured', () => {
    const bare = { ordered: { power: rx(1), addD: 2 }, measured: { power: rx(1) } };
    const inspection = inspect(pair('multifocal', bare), ANSI_Z80_1_2015);
    expect(
      inspection.items.filter(({ outcome }) => outcome === 'not measured').map(({ item: name }) => name),
    ).toEqual(['add', 'add', 'horizontal-prism', 'vertical-prism']);
    expect(inspection.passed).toBeNull();
  });

  it('passes by a text that was seen, and says what rests on memory only where it does', () => {
    const good = pair('single-vision', lens(rx(-2)));
    expect(inspect(good, ANSI_Z80_1_2015)).toMatchObject({ passed: true, fromMemory: false });
    const polarised = { ...good, placed: { 'polarising-axis': { ordered: 180, measured: 180 } } };
    expect(inspect(polarised, ANSI_Z80_1_2015)).toMatchObject({ passed: true, fromMemory: true });
    const turned = { ...good, placed: { 'polarising-axis': { ordered: 180, measured: 10 } } };
    expect(inspect(turned, ANSI_Z80_1_2015)).toMatchObject({ passed: null, fromMemory: true });
    expect(inspect(turned, ANSI_Z80_1_2015, true)).toMatchObject({ passed: false });
  });

  it('names the item nearest to its limit as decisive', () => {
    const close = inspect(pair('single-vision', lens(rx(-4, -1, 90), rx(-4, -1, 92))), ANSI_Z80_1_2015);
    expect(close).toMatchObject({ passed: true, decisive: { item: 'axis', deviation: 2, limit: 3 } });
    const exact = inspect(pair('progressive', lens(rx(-1))), NEW_JERSEY);
    expect(exact.decisive).toMatchObject({ item: 'power', eye: 'right' });
  });

  it('names the item that has used most of its limit, not the one furthest off', () => {
    // 2 of 3 degrees against 0.12 of 0.13 D.
    const { decisive } = inspect(
      pair('single-vision', lens(rx(-4, -1, 90), rx(-4.12, -1, 92))),
      ANSI_Z80_1_2015,
    );
    expect(decisive).toMatchObject({ item: 'power', deviation: -0.12 });
  });

  it('says of each item whose it is, and of a height how far up or down', () => {
    const placed = { 'segment-height': { ordered: 18, measured: 17.2 } };
    const { items } = inspect({ ...pair('multifocal', lens(rx(-1))), placed }, ANSI_Z80_1_2015);
    expect(items.map(({ item: name, eye }) => `${eye} ${name}`)).toEqual([
      'right power',
      'right cylinder',
      'right axis',
      'left power',
      'left cylinder',
      'left axis',
      'both horizontal-prism',
      'both vertical-prism',
      'both segment-height',
    ]);
    expect(items.at(-1)).toMatchObject({ deviation: -0.8, outcome: 'pass' });
  });

  it('measures the polarising axis around the half turn', () => {
    const placed = { 'polarising-axis': { ordered: 180, measured: 2 } };
    const inspection = inspect({ ...pair('single-vision', lens(rx(-1))), placed }, ANSI_Z80_1_2015);
    expect(item(inspection, 'polarising-axis')).toMatchObject({ deviation: 2, outcome: 'pass' });
  });

  it('judges one eye alone without a word on the prism of the pair', () => {
    const { items } = inspect({ kind: 'single-vision', right: lens(rx(-1)), left: null }, ANSI_Z80_1_2015);
    expect(items.map(({ item: name }) => name)).toEqual(['power', 'cylinder', 'axis']);
    const other = inspect({ kind: 'single-vision', right: null, left: lens(rx(-1)) }, ANSI_Z80_1_2015);
    expect(other.items.map(({ eye }) => eye)).toEqual(['left', 'left', 'left']);
  });
});
