/**
 * Luminous transmittance and colour of a lens from its spectrum, in daylight D65 for the CIE 1931 observer.
 *
 * Sums over 380 to 780 nm by 5 nm, the method of the sunglare standards. A spectrum that does not cover that range
 * gives null: what was not declared is not known.
 */
import {
  DAYLIGHT_D65,
  OBSERVER_X,
  OBSERVER_Y,
  OBSERVER_Z,
  TABLE_START_NM,
  TABLE_STEP_NM,
} from './observer.ts';
import { type Spectrum, transmittanceAt } from './spectrum.ts';

/** Tristimulus values; Y = 1 for the bare daylight. */
export interface Tristimulus {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A colour for a drawing: sRGB channels, whole numbers 0 to 255. */
export interface SrgbColour {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

/** Tristimulus values of daylight seen through the lens; null where the spectrum does not cover 380 to 780 nm. */
export function tristimulus(spectrum: Spectrum): Tristimulus | null {
  const sum = { x: 0, y: 0, z: 0 };
  let white = 0;
  for (const [i, daylight] of DAYLIGHT_D65.entries()) {
    const transmittance = transmittanceAt(spectrum, TABLE_START_NM + i * TABLE_STEP_NM);
    if (transmittance === null) return null;
    const seen = daylight * transmittance;
    sum.x += seen * (OBSERVER_X[i] as number);
    sum.y += seen * (OBSERVER_Y[i] as number);
    sum.z += seen * (OBSERVER_Z[i] as number);
    white += daylight * (OBSERVER_Y[i] as number);
  }
  return { x: sum.x / white, y: sum.y / white, z: sum.z / white };
}

/** Luminous transmittance (0 to 1): daylight weighted by V(lambda); null where the spectrum does not cover it. */
export const luminousTransmittance = (spectrum: Spectrum): number | null => tristimulus(spectrum)?.y ?? null;

/** sRGB colour (IEC 61966-2-1) of tristimulus values; colours outside its gamut are clipped channel by channel. */
export function toSrgb({ x, y, z }: Tristimulus): SrgbColour {
  return {
    red: channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
    green: channel(-0.969266 * x + 1.8760108 * y + 0.041556 * z),
    blue: channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z),
  };
}

/** sRGB colour of a white sheet in daylight seen through the lens; null where the spectrum does not cover it. */
export function lensColour(spectrum: Spectrum): SrgbColour | null {
  const seen = tristimulus(spectrum);
  return seen === null ? null : toSrgb(seen);
}

function channel(linear: number): number {
  const clipped = Math.min(1, Math.max(0, linear));
  const encoded = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * clipped ** (1 / 2.4) - 0.055;
  return Math.round(255 * encoded);
}
