// Every figure of this file: ISO 21987:2017 and ISO 8980-1:2004 from memory, to be verified against the texts.
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/optics/tolerance/inspect.ts';
import { iso21987 } from '../../../src/optics/tolerance/iso21987.ts';
import { expectItem, item, lens, pair, rx } from './cases.ts';

const ISO = iso21987();

describe('ISO 21987 from memory', () => {
  it.each([
    [3, 0.12],
    [6, 0.12],
    [9, 0.12],
    [9.25, 0.18],
    [12, 0.18],
    [12.25, 0.25],
    [20, 0.25],
    [20.25, 0.37],
  ])('holds each meridian of a lens of -%d D to %d D', (d, limit) => {
    expectItem(ISO, 'single-vision', lens(rx(-d)), 'power', 'pass', limit);
  });

  it('judges the meridian that is further off, not the stronger alone', () => {
    const one = lens(rx(-1, -2, 180), rx(-1.14, -1.86, 180));
    expectItem(ISO, 'single-vision', one, 'power', 'fail', 0.12);
  });

  it.each([
    [3, [0.09, 0.12, 0.18, 0.25]],
    [6, [0.12, 0.12, 0.18, 0.25]],
    [9, [0.12, 0.18, 0.18, 0.25]],
    [12, [0.12, 0.18, 0.25, 0.25]],
    [20, [0.18, 0.25, 0.25, 0.25]],
    [24, [0.25, 0.25, 0.37, 0.37]],
  ])('holds the cylinder by the highest meridian, here %d D', (strongest, limits) => {
    for (const [i, cylinder] of [0.75, 4, 6, 6.25].entries()) {
      // Mixed powers keep the highest meridian at hand while the cylinder grows.
      const order = rx(strongest, -Math.min(cylinder, 2 * strongest), 90);
      expectItem(
        ISO,
        'single-vision',
        lens(order),
        'cylinder',
        'pass',
        limits[cylinder > 2 * strongest ? 2 : i] ?? null,
      );
    }
  });

  it.each([
    ['21987:2017', [16, 9, 6, 4, 3, 2]],
    ['8980-1:2004', [7, 7, 5, 3, 2, 2]],
  ] as const)('holds the axis by the set of ISO %s', (set, limits) => {
    const weak = (cylinder: number, limit: number | null) => {
      const outcome = limit === null ? 'no limit held' : 'pass';
      const one = lens(rx(0, -cylinder, 20));
      expectItem(iso21987(set), 'single-vision', one, 'axis', outcome, limit);
    };
    weak(0.12, set === '21987:2017' ? null : 7);
    weak(0.125, limits[0]);
    for (const [i, cylinder] of [0.25, 0.5, 0.75, 1.5, 2.5, 2.75].entries()) {
      const one = lens(rx(0, -cylinder, 20));
      expectItem(iso21987(set), 'single-vision', one, 'axis', 'pass', limits[i] ?? null);
    }
  });

  it.each([
    [0, 0.67, 0.5],
    [2, 0.67, 0.5],
    [2.25, 1, 0.75],
    [10, 1, 0.75],
    [10.5, 1.25, 1],
  ])('holds mounted prism by the prism ordered, here %d', (prism, horizontal, vertical) => {
    const one = {
      ordered: { power: rx(-1), prism: { x: prism, y: prism } },
      measured: { power: rx(-1), prism: { x: prism, y: prism } },
    };
    const inspection = inspect(pair('single-vision', one), ISO);
    const unit = 'prism dioptres';
    expect(item(inspection, 'horizontal-prism')).toMatchObject({ limit: horizontal, unit });
    expect(item(inspection, 'vertical-prism')).toMatchObject({ limit: vertical, unit });
  });

  it('holds 2.0 mm horizontally and 1.0 mm vertically for strong lenses', () => {
    const inspection = inspect(pair('single-vision', lens(rx(-8))), ISO);
    expect(item(inspection, 'horizontal-reference-point').limit).toBe(2);
    expect(item(inspection, 'vertical-reference-point').limit).toBe(1);
  });

  it('says in name and title which set of axis limits it has', () => {
    expect([iso21987(), iso21987('8980-1:2004')]).toMatchObject([
      { id: 'iso-21987-2017', title: 'ISO 21987:2017 (axis limits of ISO 21987:2017)' },
      { id: 'iso-21987-2017-axis-2004', title: 'ISO 21987:2017 (axis limits of ISO 8980-1:2004)' },
    ]);
  });

  it('never decides by default, and says so', () => {
    const good = inspect(pair('single-vision', lens(rx(-2))), ISO);
    expect(good).toMatchObject({ passed: null, fromMemory: true });
    expect(inspect(pair('single-vision', lens(rx(-2))), ISO, true).passed).toBe(true);
    expect(ISO).toMatchObject({ basis: 'from memory', note: expect.stringContaining('verify') });
  });

  it('holds no limit for progressive lenses, which is never a pass', () => {
    const inspection = inspect(pair('progressive', lens(rx(-2), rx(-5))), ISO, true);
    expect(new Set(inspection.items.map(({ outcome }) => outcome))).toEqual(new Set(['no limit held']));
    expect(inspection).toMatchObject({ passed: null, decisive: null });
  });
});
