/** How the owner's workroom works: what it holds a pair to, how it cuts, what it prints on receipts. */
import type { PlacedItem } from '../optics/tolerance/table.ts';
import type { DesignKind, RangeD } from './design.ts';
import type { MountingKind } from './frame.ts';
import type { TintKind } from './tint.ts';

/** Tolerance tables that a shop may name: ids of optics/tolerance. */
export const TOLERANCE_IDS = [
  'ansi-z80.1-2015',
  'iso-21987-2017',
  'iso-21987-2017-axis-2004',
  'njac-13-35-5.2',
] as const;

/** The shop's own limits, plus or minus, put over those of the table; null: as the table has them. */
export interface OwnLimits {
  /** Any power, D. */
  readonly powerD: number | null;
  /** Any cylinder, D. */
  readonly cylinderD: number | null;
  /** By the cylinder ordered, ascending, D and degrees. */
  readonly axis: readonly { readonly upToD: number; readonly degrees: number }[] | null;
  /** Any add, D. */
  readonly addD: number | null;
  /** Items of one number, in the item's own unit. */
  readonly placed: Readonly<Partial<Record<PlacedItem, number>>>;
}

/** The tolerance profile of a shop. */
export interface ToleranceChoice {
  readonly standard: (typeof TOLERANCE_IDS)[number];
  /** The owner has checked figures that are marked as from memory against the text: they may decide a pair. */
  readonly memoryChecked: boolean;
  readonly own: OwnLimits;
}

/** Where a job stands. `sent` is done; `returned` has come back. */
export const JOB_STATES = [
  'received',
  'lenses-ordered',
  'lenses-in',
  'cut',
  'inspected',
  'sent',
  'returned',
] as const;
export type JobState = (typeof JOB_STATES)[number];

/** States that a job can be late in. */
export type OpenState = Exclude<JobState, 'sent'>;

/** A code of an insurer or health scheme, printed on the line that it is for. All that is named must hold. */
export interface BillingCode {
  readonly code: string;
  readonly label: string;
  /** Printed once a frame, or once a lens. */
  readonly of: 'frame' | 'lens';
  readonly when: {
    readonly design?: readonly DesignKind[] | undefined;
    /** Ids. */
    readonly material?: readonly string[] | undefined;
    readonly tint?: readonly TintKind[] | undefined;
    /** Ids. */
    readonly coating?: readonly string[] | undefined;
    /** Absolute sphere in minus-cylinder form, D. */
    readonly sphereAbsD?: RangeD | undefined;
    /** Absolute cylinder, D. */
    readonly cylinderAbsD?: RangeD | undefined;
    readonly addD?: RangeD | undefined;
    /** Whether prism is prescribed in this lens. */
    readonly prism?: boolean | undefined;
  };
}

/** How one or several materials are held and polished. */
export interface EdgingNote {
  /** Ids. */
  readonly materials: readonly string[];
  readonly pressure: string;
  readonly polish: string;
}

/** The form that this workroom cuts, mm and degrees. */
export interface CutHabits {
  readonly bevelHeightMm: number;
  readonly bevelAngleDeg: number;
  readonly grooveWidthMm: number;
  readonly grooveDepthMm: number;
  /** Least lens on each side of a groove. */
  readonly grooveShoulderMm: number;
  /** What the finished circumference is cut over that of the outline; below 0 smaller. */
  readonly addedToCircumferenceMm: Readonly<Record<MountingKind, number>>;
}

export interface Workroom {
  readonly tolerance: ToleranceChoice;
  /** Days after which a job is late in a state. */
  readonly lateAfterDays: Readonly<Record<OpenState, number>>;
  /** Printed on receipts; null: none. */
  readonly taxId: string | null;
  /** A sentence below the billing codes; null: none. */
  readonly billingNote: string | null;
  readonly billing: readonly BillingCode[];
  readonly edging: readonly EdgingNote[];
  /** What is looked at before a pair leaves. */
  readonly alignment: readonly string[];
  readonly cut: CutHabits;
}
