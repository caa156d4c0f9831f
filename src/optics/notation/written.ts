/** A prescription as it is written: what the notation holds, before anything is made of it. */
import type { NamedPrism } from '../prismBase.ts';
import type { SpheroCylinder } from '../types.ts';

/** One eye as written. */
export interface WrittenEye {
  /** In the form written (plus or minus cylinder), D; null for a balance lens. */
  readonly power: SpheroCylinder | null;
  /** D; null where none is written. */
  readonly addD: number | null;
  /** In the order written; empty where none is. */
  readonly prisms: readonly NamedPrism[];
}

/** Both eyes as written; an eye that is not written is null. */
export interface WrittenPrescription {
  readonly right: WrittenEye | null;
  readonly left: WrittenEye | null;
}
