/** Filters one behind another: transmittances multiply, densities add. */
import { within } from './domain.ts';
import { endNm, type Spectrum, transmittanceAt } from './spectrum.ts';

/** Optical density -log10 of a transmittance above 0 up to 1. Throws a RangeError outside. */
export const opticalDensity = (transmittance: number): number =>
  0 - Math.log10(within('transmittance', transmittance, Number.MIN_VALUE, 1, ''));

/** Transmittance (0 to 1) of an optical density of 0 or more. Throws a RangeError below 0. */
export const transmittanceOfDensity = (density: number): number =>
  10 ** -within('optical density', density, 0, Infinity, '');

/**
 * Luminous transmittance (0 to 1) of filters together: their product. Exact for neutral filters; coloured ones need
 * their spectra (`combinedSpectrum`). No filter at all gives 1.
 */
export const combinedTransmittance = (transmittances: readonly number[]): number =>
  transmittances.reduce((product, t) => product * within('transmittance', t, 0, 1, ''), 1);

/**
 * Spectrum of two filters together over the range that both declare, at the finer of their steps; no values where
 * they have no wavelength in common.
 */
export function combinedSpectrum(first: Spectrum, second: Spectrum): Spectrum {
  const fromNm = Math.max(first.fromNm, second.fromNm);
  const stepNm = Math.min(first.stepNm, second.stepNm);
  const steps = Math.floor((Math.min(endNm(first), endNm(second)) - fromNm) / stepNm + 1e-9);
  const transmittance: number[] = [];
  for (let i = 0; i <= steps; i++) {
    const a = transmittanceAt(first, fromNm + i * stepNm);
    const b = transmittanceAt(second, fromNm + i * stepNm);
    if (a !== null && b !== null) transmittance.push(a * b);
  }
  return { fromNm, stepNm, transmittance };
}
