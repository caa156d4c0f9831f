/**
 * The order file, version 1: JSON in UTF-8, as it stands or sealed with age to the shop's public keys.
 *
 * `bevelbook-order` says the version. A version that this program does not know is refused, never guessed at; an older
 * one is brought up step by step (migrate.ts). Every key below is there, and no other: what is not known is `null`, an
 * empty text or an empty list. Texts are text: nothing in them is ever read as markup. The JSON Schema is printed by
 * `npm run -s open -- --schema`.
 *
 * `request` is the question that the shop was asked, and `shown` what it answered: the workroom asks again and compares,
 * since nothing in a file that came from outside proves who wrote it.
 */
import type { Consent } from '../catalogue/orderTerms.ts';
import type { QuoteLine } from '../pricing/line.ts';
import type { Verdict } from '../quote/answer.ts';
import type { QuoteRequest } from '../quote/request.ts';
import type { Figures, Level } from '../rules/finding.ts';

export const ORDER_VERSION = 1;

/** The first key of an order file. */
export const VERSION_KEY = 'bevelbook-order';

export interface Buyer {
  readonly name: string;
  /** Postal address, line by line. */
  readonly lines: readonly string[];
  /** Empty: none given. */
  readonly email: string;
  /** Empty: none given. */
  readonly phone: string;
}

export const ATTACHMENT_TYPES = [
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/heic',
  'application/pdf',
] as const;
export type AttachmentType = (typeof ATTACHMENT_TYPES)[number];

/** A picture of the prescription, or a PDF of it. */
export interface Attachment {
  readonly name: string;
  /** As the bytes themselves say, not as the name does. */
  readonly type: AttachmentType;
  readonly base64: string;
}

/** The prescription on paper; what was read from it is in the request. */
export interface PrescriptionPaper {
  /** As the buyer wrote it down. */
  readonly written: string;
  /** Who prescribed, and where that person practises; empty: not known. The date is `issued` in the request. */
  readonly prescriber: { readonly name: string; readonly place: string };
  readonly attachments: readonly Attachment[];
}

export const MEASURERS = ['buyer', 'shop', 'prescriber', 'optician', 'nobody'] as const;
export type Measurer = (typeof MEASURERS)[number];

/** What is known of a pair besides the request; one for each pair of it, in the same order. */
export interface OrderPair {
  /** Name of the person who wears the pair. */
  readonly wearer: string;
  /** Null exactly where the request has no prescription. */
  readonly prescription: PrescriptionPaper | null;
  readonly measuredBy: Measurer;
  /** How it was measured, or another name. */
  readonly measuredNote: string;
  /** Rules whose cautions for this pair the buyer confirmed. */
  readonly confirmed: readonly string[];
  /** Base curve of the glasses that the wearer is used to, D; null: not known. */
  readonly wornBaseCurveD: number | null;
}

export interface ShownFinding {
  readonly rule: string;
  readonly level: Level;
  readonly eye: 'right' | 'left' | 'both';
  readonly figures: Figures;
  readonly message: string;
}

/** The figures of a lens that a buyer chooses by. */
export interface ShownLens {
  readonly baseCurveD: number;
  readonly centreThicknessMm: number;
  readonly thickestMm: number;
  readonly thinnestMm: number;
  readonly massG: number;
}

export interface ShownPair {
  readonly verdict: Verdict;
  readonly findings: readonly ShownFinding[];
  readonly right: ShownLens | null;
  readonly left: ShownLens | null;
}

/** What the buyer saw when the order was made. */
export interface Shown {
  readonly verdict: Verdict;
  readonly pairs: readonly ShownPair[];
  readonly price: {
    /** ISO 4217. */
    readonly currency: string;
    readonly lines: readonly QuoteLine[];
    /** Minor units. */
    readonly total: number;
  };
}

/** The way to pay that was chosen, in the shop's words with number and total filled in. */
export interface OrderPayment {
  readonly id: string;
  readonly label: string;
  readonly words: string;
  readonly link: string | null;
}

export interface Order {
  readonly [VERSION_KEY]: typeof ORDER_VERSION;
  /** 12 digits, the last two of them check digits: number.ts. */
  readonly number: string;
  readonly shop: {
    readonly name: string;
    readonly address: string;
    /** SHA-256 of the catalogue that the buyer saw: shopVersion.ts. */
    readonly version: string;
  };
  readonly buyer: Buyer;
  /** As read from the buyer's entries; its `date` is the civil date of the order. */
  readonly request: QuoteRequest;
  readonly pairs: readonly OrderPair[];
  readonly shown: Shown;
  /** Exactly the words that were accepted. */
  readonly consents: readonly Consent[];
  /** Null where the shop names no way to pay. */
  readonly payment: OrderPayment | null;
  readonly notes: string;
}
