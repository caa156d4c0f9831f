/** One package as the rules see it: what was asked, and what the optics made of it. */
import type { Coating } from '../catalogue/coating.ts';
import type { Design, Use } from '../catalogue/design.ts';
import type { MountingKind, NotOffered, Stock } from '../catalogue/frame.ts';
import type { Material, StockBlanks } from '../catalogue/material.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import type { Tint } from '../catalogue/tint.ts';
import type { PowerProfile } from '../optics/powerProfile.ts';
import type {
  BackSurface,
  Eye,
  FrontSurface,
  Outline,
  PointMm,
  PrismVector,
  SpheroCylinder,
} from '../optics/types.ts';

export interface FrameSituation {
  /** null: the shopper's own frame. */
  readonly id: string | null;
  readonly size: string | null;
  /** What shoppers read for the size; null with it. */
  readonly sizeName: string | null;
  readonly colourway: string | null;
  readonly colourwayName: string;
  readonly stock: Stock;
  readonly notOffered: readonly NotOffered[];
  readonly aMm: number;
  readonly bMm: number;
  readonly dblMm: number;
  readonly mounting: MountingKind;
  readonly outlineOrigin: 'traced' | 'fitted';
  readonly rimDepthMm: number;
  readonly faceFormDeg: number;
  /** D at the tool index; null: not known. */
  readonly frameCurveD: number | null;
  readonly massG: number;
}

export interface EyePrescription {
  /** D; null: not given. */
  readonly sphereD: number | null;
  readonly cylinderD: number;
  readonly axisDeg: number;
  /** D; null: none. */
  readonly addD: number | null;
  readonly prism: PrismVector;
  /** A lens that follows the other eye's power; nothing of its own is read. */
  readonly balance: boolean;
  /** Something was written for a balance lens and is not read. */
  readonly leftOut: boolean;
}

/** What is ordered for a lens as it is worn. */
export interface Compensated {
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
  /** Whether tilt or wrap took part. */
  readonly turned: boolean;
  /** Distance from the eye at the test and as worn, mm; null where it took no part. */
  readonly moved: { readonly testedMm: number; readonly wornMm: number } | null;
}

export interface BlankSituation {
  readonly kind: 'stock' | 'surfaced';
  /** Diameter of the smallest blank that would do, mm. */
  readonly neededMm: number;
  /** Diameter that is taken, the largest where none is large enough, mm. */
  readonly usedMm: number;
  /** Radius left at the closest point, below 0 where it is short, mm. */
  readonly spareMm: number;
  /** Where the blank is closest, degrees of the front view. */
  readonly closestAtDeg: number;
  /** Middle of the blank, from the boxed centre. */
  readonly middle: PointMm;
}

/** Figures of a lens that can be cut, rounded as they are shown: 0.01 mm, 0.1 g, 0.01 D. */
export interface LensSituation {
  readonly baseCurveD: number;
  readonly conicKnown: boolean;
  readonly centreThicknessMm: number;
  readonly governedBy: string;
  readonly thickest: { readonly mm: number; readonly atDeg: number };
  readonly thinnest: { readonly mm: number; readonly atDeg: number };
  readonly beyondRimMm: number;
  readonly massG: number;
  readonly blank: BlankSituation;
  /** Exact surfaces and thickness of the lens as it is made, for rays and drawings. */
  readonly surfaces: {
    readonly front: FrontSurface;
    readonly back: BackSurface;
    readonly centreThicknessMm: number;
    /** Power profile of a progressive on its surface; null elsewhere. */
    readonly profile: PowerProfile | null;
  };
  /** Where a stock lens is thinner than the limit. */
  readonly shortfalls: readonly { readonly at: string; readonly missingMm: number; readonly atDeg: number }[];
  /** Why thickness and mass are estimates: the surface of a progressive, the ledge of a segment. */
  readonly estimate: 'profile' | 'segment' | null;
}

/** Why no lens could be computed. */
export interface LensRefusal {
  readonly reason:
    | 'no-base-curve'
    | 'surface-too-small'
    | 'surfaces-cross'
    | 'out-of-range'
    | 'not-in-stock'
    | 'no-blanks';
  readonly figures: Readonly<Record<string, number | string>>;
}

export interface EyeSituation {
  readonly eye: Eye;
  readonly prescribed: EyePrescription;
  /** Power at the reference point for the use asked; null while it is not known. */
  readonly ordered: SpheroCylinder | null;
  /** Power that the wearer is meant to have at the back of the lens where it is worn, D; null as `ordered`. */
  readonly intended: SpheroCylinder | null;
  /** Power and prism to order so that the wearer gets it in this frame, and what makes them others; null: the same. */
  readonly compensated: Compensated | null;
  /** Add that the design is ordered with, D; 0 where none. */
  readonly orderedAddD: number;
  /** Distance from the middle of the bridge that the lens is centred for, mm; null: not known. */
  readonly pdMm: number | null;
  readonly fittingHeightMm: number | null;
  readonly segmentHeightMm: number | null;
  readonly outline: Outline;
  /** Optical centre or prism reference point; null while a measurement is missing. */
  readonly reference: PointMm | null;
  readonly cross: PointMm | null;
  /** How far the near zone or segment lies inwards of the distance centre, mm. */
  readonly nearInsetMm: number;
  readonly lens: LensSituation | null;
  readonly refusal: LensRefusal | null;
}

export interface Situation {
  readonly habits: ShopHabits;
  /** Civil date judged for. */
  readonly date: string;
  readonly wearer: 'adult' | 'child' | 'one-eyed';
  readonly use: Use;
  readonly frame: FrameSituation;
  readonly design: Design;
  readonly material: Material;
  readonly tint: Tint | null;
  readonly coating: Coating | null;
  /** Ready-made lenses that both eyes are cut from; null: made to order. */
  readonly stock: StockBlanks | null;
  readonly blankAsked: 'stock' | 'surfaced' | 'auto';
  readonly hasPrescription: boolean;
  /** Civil date; null: not known. */
  readonly issued: string | null;
  /** One number was given and halved. */
  readonly pdHalved: boolean;
  readonly nearPdGiven: boolean;
  /** Pantoscopic tilt as worn, degrees: measured, or the shop's usual one. */
  readonly tiltDeg: number;
  /** As tested, from the prescription, mm; null: not known. */
  readonly vertexDistanceMm: number | null;
  readonly right: EyeSituation;
  readonly left: EyeSituation;
}
