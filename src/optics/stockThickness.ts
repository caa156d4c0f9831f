/**
 * A stock lens is ground for its whole blank, whatever frame it goes into: so a plus lens from stock is thicker
 * than one surfaced for the frame. This computes the thickness of the uncut blank where the maker's is not known.
 */
import { finishLens } from './finishedLens.ts';
import type { LensRefusal } from './lensToMake.ts';
import type { SpheroCylinder } from './types.ts';

/** An uncut stock blank. */
export interface StockBlank {
  readonly power: SpheroCylinder;
  readonly index: number;
  readonly frontPowerD: number;
  readonly frontConic: number;
  readonly diameterMm: number;
  /** Least thickness in the centre and at the blank's edge, mm. */
  readonly centreMm: number;
  readonly edgeMm: number;
}

/** Centre thickness, mm, of a round blank that meets its limits at centre and edge, or why there is none. */
export function stockThicknessMm(
  blank: StockBlank,
): { readonly ok: true; readonly centreThicknessMm: number } | ({ readonly ok: false } & LensRefusal) {
  const made = finishLens({
    power: blank.power,
    prism: { x: 0, y: 0 },
    index: blank.index,
    densityGPerCm3: 1,
    frontPowerD: blank.frontPowerD,
    frontConic: blank.frontConic,
    outline: { radiiMm: new Array<number>(360).fill(blank.diameterMm / 2) },
    reference: { xMm: 0, yMm: 0 },
    limits: { centreMm: blank.centreMm, edgeMm: blank.edgeMm, holes: [] },
    fixedCentreThicknessMm: null,
    profile: null,
  });
  return made.ok ? { ok: true, centreThicknessMm: made.lens.centreThicknessMm } : made;
}
