import type { OptionText } from './limit.ts';

export const TINT_KINDS = ['clear', 'solid', 'gradient', 'photochromic', 'polarised', 'mirror'] as const;
export type TintKind = (typeof TINT_KINDS)[number];

/** One declared state of a tint: a photochromic lens has several, a gradient its top and its foot. */
export interface TintState {
  /** Such as `clear at 23 °C`; shown as it stands. */
  readonly name: string;
  /** Luminous transmittance of the tint by itself, above 0 to 1. */
  readonly transmittance: number;
  /** sRGB for drawings, `#rrggbb`. */
  readonly colour: string;
  /** Lens temperature of a photochromic state, degrees Celsius; null where it does not matter. */
  readonly temperatureC: number | null;
}

/** Transmittance by wavelength. */
export interface TintSpectrum {
  readonly fromNm: number;
  readonly stepNm: number;
  /** 0 to 1. */
  readonly transmittance: readonly number[];
}

export interface Tint extends OptionText {
  readonly kind: TintKind;
  readonly polarised: boolean;
  readonly mirrored: boolean;
  readonly states: readonly TintState[];
  /** Of the darkest state; null: spectral requirements are "not shown", never passed. */
  readonly spectrum: TintSpectrum | null;
  readonly materials: readonly string[];
  readonly designs: readonly string[];
}
