/** What every paper is written from: the job, the shop, its words, and how amounts and days are written. */
import type { Slots } from '../../catalogue/words.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import type { MeasuredPair } from '../inspection/measured.ts';
import type { PairInspection } from '../inspection/pairInspection.ts';
import type { Job } from '../job.ts';
import type { OpenedJob, WorkroomOffer } from '../openJob.ts';

/** What the owner adds to an order; all of it may be left out. */
export interface PaperOptions {
  /** By pair; null or absent: not inspected yet, the sheet is printed to be filled in. */
  readonly measured?: readonly (MeasuredPair | null)[];
  /** Markings left on the lenses, in the owner's words, by pair. */
  readonly markings?: readonly (string | null)[];
  /** Remark to the supplier, by pair. */
  readonly supplierRemark?: readonly (string | null)[];
  readonly paid?: { readonly on: string; readonly how: string; readonly amountMinor: number };
  /** Whose lines the receipt has: reckoned now, or as the shopper saw them where the owner honours those. */
  readonly price?: 'now' | 'shown';
  readonly parcel?: { readonly on: string; readonly carrier: string; readonly number: string };
}

/** One pair of the job with its place among the others. */
export interface PaperPair {
  readonly judged: JudgedPair;
  /** From 0. */
  readonly at: number;
  readonly inspection: PairInspection | null;
}

export interface PaperContext {
  readonly job: Job;
  readonly offer: WorkroomOffer;
  readonly opened: OpenedJob;
  readonly options: PaperOptions;
  /** Pairs that can be read. */
  readonly pairs: readonly PaperPair[];
  /** The sentence below `workroom` in the shop's words. */
  readonly t: (key: string, slots?: Slots) => string;
  readonly money: (minor: number) => string;
  /** A civil date as the shop's language writes it; a text that is none stays as it is. */
  readonly day: (civilDate: string) => string;
}
