/** The seller: who they are, the law and habits they work under, where they send and what tax they add. */
import type { OrderTerms } from './orderTerms.ts';

/** A place that the shop sends to. A longer name is tried first: `US-ME` before `US` before `*`. */
export interface ShippingRate {
  /** ISO 3166 country or country-subdivision codes, or `*` for anywhere else. */
  readonly destinations: readonly string[];
  readonly label: string;
  /** Minor units. */
  readonly amountMinor: number;
}

/** A sales tax or value added tax of one destination. */
export interface TaxRate {
  readonly destinations: readonly string[];
  readonly label: string;
  /** Parts per million: 5.5 % is 55000. */
  readonly ratePpm: number;
  /** What the tax is taken on. */
  readonly on: readonly ('frame' | 'lenses' | 'shipping')[];
}

/** A ground on which no tax is added; the reason is quoted on the line. */
export interface TaxExemption {
  readonly id: string;
  readonly label: string;
  readonly reason: string;
  readonly destinations: readonly string[];
}

export interface Shop {
  readonly name: string;
  readonly tagline: string;
  /** Absolute address of the published site, without a slash at its end. */
  readonly address: string;
  /** Language of this catalogue's texts, such as `en`. */
  readonly language: string;
  /** Every language of the shop, its own first. */
  readonly languages: readonly string[];
  /** First part of the addresses of this language's pages, such as `/fr`; '' for the shop's own language. */
  readonly path: string;
  /** ISO 4217 code; every amount of the shop is in it. */
  readonly currency: string;
  /** Digits after the point in this currency: 0, 2 or 3. */
  readonly currencyDigits: number;
  /** IANA name; promotions begin and end by its calendar. */
  readonly timeZone: string;
  /** Default destination of a quote. */
  readonly destination: string;
  /** What parts of countries are called, by their ISO 3166 codes. */
  readonly places: readonly { readonly code: string; readonly name: string }[];
  readonly contact: {
    readonly lines: readonly string[];
    readonly email: string;
    readonly phone: string;
  };
  /** The seller's own statement of licence. */
  readonly licence: string;
  readonly habits: ShopHabits;
  readonly shipping: readonly ShippingRate[];
  readonly tax: readonly TaxRate[];
  readonly exemptions: readonly TaxExemption[];
  readonly order: OrderTerms;
  /** Whether lenses are offered for a frame that the shopper already has. */
  readonly ownFrame: boolean;
}

/** The figures by which this workroom works. */
export interface ShopHabits {
  /** How long a prescription is accepted, months. */
  readonly prescriptionMonths: number;
  /** Added to the diameter of the smallest blank for edging, mm. */
  readonly blankAllowanceMm: number;
  /** Largest difference of base curve between the eyes of one pair, D. */
  readonly baseCurveDifferenceD: number;
  /** Strongest meridian from which a vertex distance is asked for, D. */
  readonly vertexFromD: number;
  /** Strongest meridian from which the pair is fitted in person, D. */
  readonly inPersonFromD: number;
  /** Ordered prism of one eye from which the pair is fitted in person, prism dioptres. */
  readonly inPersonPrism: number;
  /** Difference of spherical equivalents from which the pair is fitted in person, D. */
  readonly anisometropiaFromD: number;
  /** Assumed where not measured. */
  readonly pantoscopicTiltDeg: number;
  readonly vertexDistanceMm: number;
  /** Distance that near lenses are made for, mm. */
  readonly nearDistanceMm: number;
  /** Share of the add that an intermediate lens has. */
  readonly intermediateAddShare: number;
  /**
   * Where the optical centre of a single vision lens goes when the pupil's height was measured: on the `pupil`, or
   * `lowered-for-tilt` by 1 mm for each 2 degrees of pantoscopic tilt.
   */
  readonly singleVisionHeight: 'pupil' | 'lowered-for-tilt';
  /** Height of the optical centre above the boxed centre where nothing was measured, mm. */
  readonly datumAboveCentreMm: number;
  /** Face form or extra tilt from which the power as worn is compensated, degrees. */
  readonly compensateFromDeg: number;
  /** Edge from which a lens is not glazed, mm. */
  readonly mostEdgeMm: number;
  /** Edge beyond the rim from which the shopper is told, mm. */
  readonly beyondRimFromMm: number;
  /** Mass of both lenses from which the shopper is told, g. */
  readonly heavyFromG: number;
  /** Sharp-view angle of a single vision lens below which the shopper is told, degrees. */
  readonly leastSharpAngleDeg: number;
  /** Prism over Abbe number at 30 degrees of gaze from which colour fringes are named, prism dioptres. */
  readonly fringesFrom: number;
}
