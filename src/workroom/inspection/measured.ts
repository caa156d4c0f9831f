/** What is entered when a finished pair is inspected. An absent value was not measured. */
import type { PrismVector, SpheroCylinder } from '../../optics/types.ts';

/** Powers by which a supplier wants a lens verified. */
export interface VerificationPower {
  readonly power: SpheroCylinder;
  readonly addD: number | null;
  readonly prism: PrismVector | null;
}

/** What is read off one lens. */
export interface MeasuredLens {
  /** At the optical centre, or the distance circle of a progressive; either sign of cylinder, D. */
  readonly power: SpheroCylinder;
  /** At the near circle or in the segment, less the distance power, D. */
  readonly addD?: number;
  /** At the ordered reference point, thinning prism and all, prism dioptres. */
  readonly prism?: PrismVector;
  /** Found place of the reference point, or of the fitting cross: from the middle of the bridge, mm. */
  readonly pdMm?: number;
  /** The same place above the lowest boxed tangent, mm. */
  readonly heightMm?: number;
  /** Top of the segment above the lowest boxed tangent, mm. */
  readonly segmentHeightMm?: number;
  /** Segment top against the horizontal, degrees, either sign. */
  readonly segmentTiltDeg?: number;
  readonly centreThicknessMm?: number;
  /** A lens clock's reading at index 1.530, D. */
  readonly baseCurveReadingD?: number;
  readonly warpageD?: number;
  /** Direction of the marks that should lie level, TABO degrees. */
  readonly polarisingAxisDeg?: number;
}

export interface MeasuredPair {
  readonly right: MeasuredLens;
  readonly left: MeasuredLens;
  /** Who inspected. */
  readonly by: string;
  /** Civil date. */
  readonly on: string;
  /** Between the middles of the segments, mm. */
  readonly segmentSeparationMm?: number;
  /** Thinning prism as the supplier ground it, base down, prism dioptres; absent: as the design has it. */
  readonly thinningPrism?: { readonly right: number; readonly left: number };
  /** By which the supplier wants the lenses verified, instead of the ordered powers. */
  readonly verification?: { readonly right?: VerificationPower; readonly left?: VerificationPower };
  /** One for each line of the shop's alignment list. */
  readonly alignment: readonly boolean[];
  readonly remarks?: string;
}
