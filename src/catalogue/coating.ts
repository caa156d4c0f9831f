import type { OptionText } from './limit.ts';

export const COATED_FACES = ['none', 'both', 'back'] as const;
export type CoatedFaces = (typeof COATED_FACES)[number];

export interface Coating extends OptionText {
  /** Which faces carry the reflection-reducing stack. */
  readonly faces: CoatedFaces;
  /** Luminous reflectance that is left on a coated face, 0 to 1; null where no face is coated. */
  readonly residualReflectance: number | null;
  readonly hard: boolean;
  readonly materials: readonly string[];
  readonly tints: readonly string[];
}
