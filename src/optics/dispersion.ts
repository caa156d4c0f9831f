/** Refractive index over wavelength, and the Abbe number that sums it up. Keep the wavelength with every index. */
import { within } from './domain.ts';

/** Fraunhofer lines, nm: yellow helium d, green mercury e, blue hydrogen F, red hydrogen C. */
export const LINES_NM = { d: 587.56, e: 546.07, F: 486.13, C: 656.27 } as const;

/** One term of Sellmeier's formula: b L² / (L² - c), with L in µm and c in µm². */
export interface SellmeierTerm {
  readonly b: number;
  readonly cUm2: number;
}

/** Refractive index at a wavelength in nm: n² = 1 + sum of the terms. Throws a RangeError outside 300 to 2500 nm. */
export function sellmeierIndex(terms: readonly SellmeierTerm[], wavelengthNm: number): number {
  const um2 = (within('wavelength', wavelengthNm, 300, 2500, 'nm') / 1000) ** 2;
  return Math.sqrt(terms.reduce((sum, { b, cUm2 }) => sum + (b * um2) / (um2 - cUm2), 1));
}

/** Abbe number (nd - 1)/(nF - nC) of a material described by Sellmeier terms. */
export function abbeNumber(terms: readonly SellmeierTerm[]): number {
  const at = (wavelengthNm: number) => sellmeierIndex(terms, wavelengthNm);
  return (at(LINES_NM.d) - 1) / (at(LINES_NM.F) - at(LINES_NM.C));
}
