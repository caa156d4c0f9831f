/**
 * What is asked at the one door. An absent value is not known; `null` is deliberately none.
 * The JSON of the command line has this shape too; requestSchema.ts checks it.
 */
import type { Use } from '../catalogue/design.ts';
import type { MountingKind } from '../catalogue/frame.ts';

/** A prism as prescribed: prism dioptres towards a named base, or towards degrees of the front view. */
export interface PrismRequest {
  readonly amount: number;
  readonly base: 'in' | 'out' | 'up' | 'down' | number;
}

export interface EyeRequest {
  /** D. */
  readonly sphere?: number;
  /** D, either sign; absent or null: none. */
  readonly cylinder?: number | null;
  /** TABO degrees 1 to 180; 0 is read as 180. */
  readonly axis?: number | null;
  /** D. */
  readonly add?: number | null;
  readonly prism?: readonly PrismRequest[] | null;
  /** A lens without a prescription of its own, to match the other in weight and looks. */
  readonly balance?: boolean;
}

export interface PrescriptionRequest {
  readonly right: EyeRequest;
  readonly left: EyeRequest;
  /** As tested, mm. */
  readonly vertexDistance?: number | null;
  /** Civil date. */
  readonly issued?: string | null;
}

export interface BothEyes {
  readonly right: number;
  readonly left: number;
}

export interface FitRequest {
  /** mm; one number is the distance between the pupils and is halved. */
  readonly pd?: number | BothEyes;
  readonly nearPd?: number | BothEyes;
  /** Pupil above the lowest boxed tangent, mm. */
  readonly fittingHeight?: BothEyes;
  /** Segment top above the lowest boxed tangent, mm. */
  readonly segmentHeight?: BothEyes;
  /** As worn, mm. */
  readonly vertexDistance?: number;
  /** Degrees. */
  readonly pantoscopicTilt?: number;
  /** Degrees. */
  readonly faceForm?: number;
}

/** A frame that the shopper already has. */
export interface OwnFrame {
  readonly a: number;
  readonly b: number;
  readonly dbl: number;
  /** Absent: the family's own roundness, an estimate. */
  readonly ed?: number;
  readonly family?: string;
  /** Of the right lens, mm at equal angles, counter-clockwise from +x. */
  readonly radii?: readonly number[];
  readonly mounting: MountingKind;
  /** Degrees. */
  readonly faceForm?: number;
}

export const BLANK_CHOICES = ['stock', 'surfaced', 'auto'] as const;

export interface LensesRequest {
  readonly use: Use;
  readonly design: string;
  readonly material: string;
  readonly tint: string | null;
  readonly coating: string | null;
  readonly blank?: (typeof BLANK_CHOICES)[number];
}

export const WEARERS = ['adult', 'child', 'one-eyed'] as const;
export type Wearer = (typeof WEARERS)[number];

export interface PairRequest {
  readonly frame: string | OwnFrame;
  readonly size?: string;
  readonly colourway?: string;
  readonly wearer?: Wearer;
  /** null: no prescription, with use `none`. */
  readonly prescription: PrescriptionRequest | null;
  readonly fit?: FitRequest;
  readonly lenses: LensesRequest;
}

export interface QuoteRequest {
  /** Civil date that prices and validity are judged for, `YYYY-MM-DD`. */
  readonly date: string;
  readonly language?: string;
  /** ISO 3166 country or subdivision; absent: the shop's own. */
  readonly destination?: string;
  /** Id of one of the shop's exemptions. */
  readonly taxExemption?: string | null;
  readonly codes?: readonly string[];
  readonly pairs: readonly PairRequest[];
}
