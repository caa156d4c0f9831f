import type { Coating } from '../catalogue/coating.ts';
import type { Design } from '../catalogue/design.ts';
import type { Material } from '../catalogue/material.ts';
import type { Tint } from '../catalogue/tint.ts';

/** The lenses of a pair by the shop's nouns; null: deliberately none. */
export interface ResolvedLenses {
  readonly design: Design;
  readonly material: Material;
  readonly tint: Tint | null;
  readonly coating: Coating | null;
}
