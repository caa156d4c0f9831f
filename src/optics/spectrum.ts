/** Spectral transmittance of a lens or tint as declared: equal steps of wavelength, joined by straight lines. */

/** Declared values, the first at `fromNm`. */
export interface Spectrum {
  readonly fromNm: number;
  /** Above 0. nm. */
  readonly stepNm: number;
  /** Fractions 0 to 1. */
  readonly transmittance: readonly number[];
}

/** Wavelength of the last declared value, nm. */
export const endNm = (spectrum: Spectrum): number =>
  spectrum.fromNm + (spectrum.transmittance.length - 1) * spectrum.stepNm;

/**
 * Transmittance (0 to 1) at a wavelength in nm, by straight lines between the declared values; null outside them:
 * what was not declared is not known.
 */
export function transmittanceAt(spectrum: Spectrum, wavelengthNm: number): number | null {
  const place = (wavelengthNm - spectrum.fromNm) / spectrum.stepNm;
  const below = Math.floor(place + 1e-9);
  const a = spectrum.transmittance[below];
  if (a === undefined) return null;
  const share = Math.max(0, place - below);
  if (share < 1e-9) return a;
  const b = spectrum.transmittance[below + 1];
  return b === undefined ? null : a + share * (b - a);
}

/**
 * Lowest transmittance (0 to 1) from `fromNm` to `toNm`, exact for straight lines: it lies at an end or at a declared
 * value. Null where the spectrum does not cover the whole range.
 */
export function leastTransmittance(spectrum: Spectrum, fromNm: number, toNm: number): number | null {
  const atStart = transmittanceAt(spectrum, fromNm);
  const atEnd = transmittanceAt(spectrum, toNm);
  if (atStart === null || atEnd === null) return null;
  const inside = spectrum.transmittance.filter((_, i) => {
    const wavelengthNm = spectrum.fromNm + i * spectrum.stepNm;
    return wavelengthNm > fromNm && wavelengthNm < toNm;
  });
  return Math.min(atStart, atEnd, ...inside);
}
