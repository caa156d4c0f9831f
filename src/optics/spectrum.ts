/** Spectral transmittance of a lens or tint as declared: points joined by straight lines. */

/** One declared point. */
export interface SpectrumPoint {
  /** nm. */
  readonly wavelengthNm: number;
  /** Fraction 0 to 1. */
  readonly transmittance: number;
}

/** Points in strictly ascending wavelength, two at least. */
export type Spectrum = readonly SpectrumPoint[];

/**
 * Transmittance (0 to 1) at a wavelength in nm, by straight lines between the declared points; null outside them:
 * what was not declared is not known.
 */
export function transmittanceAt(spectrum: Spectrum, wavelengthNm: number): number | null {
  for (let i = 1; i < spectrum.length; i++) {
    const a = spectrum[i - 1] as SpectrumPoint;
    const b = spectrum[i] as SpectrumPoint;
    if (wavelengthNm < a.wavelengthNm || wavelengthNm > b.wavelengthNm) continue;
    const share = (wavelengthNm - a.wavelengthNm) / (b.wavelengthNm - a.wavelengthNm);
    return a.transmittance + share * (b.transmittance - a.transmittance);
  }
  return null;
}

/**
 * Lowest transmittance (0 to 1) from `fromNm` to `toNm`, exact for straight lines: it lies at an end or at a declared
 * point. Null where the spectrum does not cover the whole range.
 */
export function leastTransmittance(spectrum: Spectrum, fromNm: number, toNm: number): number | null {
  const atStart = transmittanceAt(spectrum, fromNm);
  const atEnd = transmittanceAt(spectrum, toNm);
  if (atStart === null || atEnd === null) return null;
  let least = Math.min(atStart, atEnd);
  for (const point of spectrum) {
    if (point.wavelengthNm > fromNm && point.wavelengthNm < toNm)
      least = Math.min(least, point.transmittance);
  }
  return least;
}
