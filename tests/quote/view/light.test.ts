import { describe, expect, it } from 'vitest';
import type { Tint } from '../../../src/catalogue/tint.ts';
import { lightView } from '../../../src/quote/view/light.ts';
import type { Situation } from '../../../src/rules/situation.ts';
import { expectNear } from '../../optics/near.ts';
import { situationOf } from './situations.ts';

const base = situationOf({});
const withTint = (change: Partial<Tint>): Situation => {
  if (base.tint === null) throw new Error('The bench has a tint.');
  return { ...base, tint: { ...base.tint, ...change } };
};
const state = (name: string, transmittance: number) => ({
  name,
  transmittance,
  colour: '#444444',
  temperatureC: null,
});

describe('reflections', () => {
  it('of a bare front face are those of its index', () => {
    // Check values, section 8: R per surface, from the printed index.
    for (const [ne, percent] of [
      [1.498, 3.97],
      [1.586, 5.14],
      [1.6, 5.33],
      [1.67, 6.3],
      [1.74, 7.29],
    ] as const) {
      const { bare } = lightView({ ...base, material: { ...base.material, ne }, tint: null, coating: null });
      expectNear(bare?.frontPercent ?? 0, percent, 0.011, '%');
    }
  });

  it('grow dimmer with a coating on both faces, and stay with none', () => {
    const quiet = {
      ...base,
      coating: base.coating && { ...base.coating, faces: 'both' as const, residualReflectance: 0.01 },
    };
    const { bare, coated } = lightView(quiet);
    expect(coated?.frontPercent).toBe(1);
    expect(coated?.backPercent).toBeLessThan(bare?.backPercent ?? 0);
    const hard = {
      ...base,
      coating: base.coating && { ...base.coating, faces: 'none' as const, residualReflectance: null },
    };
    expect(lightView(hard).coated).toBeNull();
  });

  it('of a mirror are not known', () => {
    expect(lightView(withTint({ kind: 'mirror', mirrored: true })).bare).toBeNull();
  });
});

describe('the states of a tint', () => {
  it('are those declared, none between', () => {
    const names = ['clear at 23 °C', 'dark at 5 °C', 'dark at 35 °C'];
    const view = lightView(
      withTint({ kind: 'photochromic', states: names.map((name, i) => state(name, 0.9 - 0.3 * i)) }),
    );
    expect(view.states.map(({ name }) => name)).toEqual(names);
  });

  it('of a gradient are its top and its foot in one picture', () => {
    const gradient = withTint({
      kind: 'gradient',
      states: [
        { ...state('at the top', 0.15), colour: '#111111' },
        { ...state('at the foot', 0.6), colour: '#999999' },
      ],
    });
    expect(lightView(gradient).states).toMatchObject([{ top: '#111111', foot: '#999999', category: 3 }]);
  });

  it('let as much light through without a tint as the index does', () => {
    const crown = { ...base, material: { ...base.material, ne: 1.523 }, tint: null, coating: null };
    // NFOS: 2n/(n² + 1) is 91.76 % for 1.523.
    expect(lightView(crown).states).toMatchObject([{ percents: [91.8], category: 0 }]);
  });
});
