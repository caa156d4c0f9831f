import Color from 'colorjs.io';
import fc from 'fast-check';
import { cmfs, illuminants } from 'spectral-color';
import { describe, expect, it } from 'vitest';
import { lensColour, luminousTransmittance, toSrgb, tristimulus } from '../../src/optics/lensColour.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const flat = (value: number) => ({ fromNm: 380, stepNm: 400, transmittance: [value, value] });
const spectrum = fc
  .array(real(0, 1), { minLength: 81, maxLength: 81 })
  .map((transmittance) => ({ fromNm: 380, stepNm: 5, transmittance }));
const channels = ({ red, green, blue }: { red: number; green: number; blue: number }) => [red, green, blue];

/** The same sums from the published tables of another package. */
function byPublishedTables(transmittance: readonly number[]): { x: number; y: number; z: number } {
  const sums = [0, 0, 0];
  let white = 0;
  for (let i = 0; i < 81; i++) {
    const nm = 380 + 5 * i;
    const daylight = illuminants.D65.samples[(nm - 300) / 5] as number;
    const observer = cmfs.CIE_1931_2DEG.samples[(nm - 360) / 5] as [number, number, number];
    for (const k of [0, 1, 2] as const) {
      sums[k] = (sums[k] as number) + daylight * observer[k] * (transmittance[i] as number);
    }
    white += daylight * observer[1];
  }
  const [x, y, z] = sums.map((sum) => sum / white) as [number, number, number];
  return { x, y, z };
}

describe('luminous transmittance', () => {
  it('of a neutral filter is its transmittance', () => {
    fc.assert(
      fc.property(real(0, 1), (t) => expectNear(luminousTransmittance(flat(t)) ?? Number.NaN, t, 1e-12, '')),
    );
  });

  it('agrees with the CIE tables of another package, as do the other tristimulus values', () => {
    fc.assert(
      fc.property(spectrum, (s) => {
        const own = tristimulus(s);
        const other = byPublishedTables(s.transmittance);
        for (const key of ['x', 'y', 'z'] as const)
          expectNear(own?.[key] ?? Number.NaN, other[key], 1e-6, '');
      }),
    );
  });

  it('lies between the lowest and the highest value of the spectrum', () => {
    fc.assert(
      fc.property(spectrum, (s) => {
        const t = luminousTransmittance(s) ?? Number.NaN;
        expect(t).toBeGreaterThanOrEqual(Math.min(...s.transmittance) - 1e-12);
        expect(t).toBeLessThanOrEqual(Math.max(...s.transmittance) + 1e-12);
      }),
    );
  });

  it('is not known where the spectrum does not cover 380 to 780 nm', () => {
    expect(luminousTransmittance({ fromNm: 400, stepNm: 5, transmittance: Array(81).fill(0.5) })).toBeNull();
    expect(lensColour({ fromNm: 400, stepNm: 300, transmittance: [1, 1] })).toBeNull();
  });

  it('weighs green most: a filter that passes 555 nm alone is brighter than one that passes 450 nm alone', () => {
    const only = (nm: number) => ({
      fromNm: 380,
      stepNm: 5,
      transmittance: Array.from({ length: 81 }, (_, i) => (380 + 5 * i === nm ? 1 : 0)),
    });
    const [green, blue] = [luminousTransmittance(only(555)), luminousTransmittance(only(450))];
    expect(green).toBeGreaterThan(10 * (blue ?? Number.NaN));
  });
});

describe('the colour of a lens', () => {
  it('is white where nothing is lost, with the white point of D65', () => {
    expect(lensColour(flat(1))).toEqual({ red: 255, green: 255, blue: 255 });
    const { x, y, z } = tristimulus(flat(1)) ?? { x: 0, y: 0, z: 0 };
    // CIE 15: chromaticity of D65.
    expectNear(x / (x + y + z), 0.3127, 0.0001, '');
    expectNear(y / (x + y + z), 0.329, 0.0001, '');
  });

  it('agrees with another package for every colour inside the gamut', () => {
    const channel = real(0, 1);
    fc.assert(
      fc.property(channel, channel, channel, (r, g, b) => {
        const [x, y, z] = new Color('srgb', [r, g, b]).to('xyz-d65').coords as [number, number, number];
        const own = channels(toSrgb({ x, y, z }));
        for (const [i, value] of [r, g, b].entries()) {
          expectNear(own[i] ?? Number.NaN, 255 * value, 0.6, 'steps of 255');
        }
      }),
    );
  });

  it('is whole steps from 0 to 255, also for colours that a screen cannot show', () => {
    fc.assert(
      fc.property(spectrum, (s) => {
        for (const value of channels(lensColour(s) ?? { red: -1, green: -1, blue: -1 })) {
          expect(Number.isInteger(value) && value >= 0 && value <= 255).toBe(true);
        }
      }),
    );
  });

  it('of a filter that passes more the longer the wavelength is brown', () => {
    const { red, green, blue } = lensColour({ fromNm: 380, stepNm: 400, transmittance: [0.02, 0.5] }) ?? {
      red: 0,
      green: 0,
      blue: 0,
    };
    expect(red > green && green > blue).toBe(true);
  });
});
