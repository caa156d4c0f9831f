/** A fault for whoever tells it in the words of a page: `worksheet.fault.<code>` and what fills it. */
export interface FaultTold {
  readonly code: FaultCode;
  /** The noun that `{of}` stands for: `worksheet.fault.of.<of>`. */
  readonly of?: FaultNoun;
  /** The unit that `{unit}` stands for: `worksheet.fault.unit.<unit>`. */
  readonly unit?: FaultUnit;
  readonly slots: Readonly<Record<string, number | string>>;
  /** What may have been meant, said behind what is expected. */
  readonly hint?: {
    readonly code: FaultHint;
    readonly slots: Readonly<Record<string, number>>;
  };
}

/** Kinds of fault that an entry of a page can have; each has its sentence in every language of the shop. */
export const FAULT_CODES = [
  'range',
  'step',
  'axis-whole',
  'axis-range',
  'axis-missing',
  'axis-alone',
  'cylinder-alone',
  'base-range',
  'no-outline',
  'no-outline-box',
] as const;
export type FaultCode = (typeof FAULT_CODES)[number];

export const FAULT_NOUNS = [
  'sphere',
  'cylinder',
  'add',
  'prism',
  'pd',
  'half-pd',
  'fitting-height',
  'segment-height',
  'vertex',
  'tilt',
  'face-form',
  'a',
  'b',
  'dbl',
] as const;
export type FaultNoun = (typeof FAULT_NOUNS)[number];

export const FAULT_UNITS = ['diopters', 'prism', 'mm', 'degrees'] as const;
export type FaultUnit = (typeof FAULT_UNITS)[number];

export const FAULT_HINTS = ['both-eyes', 'point'] as const;
export type FaultHint = (typeof FAULT_HINTS)[number];

/** One thing wrong with a request. */
export interface Fault {
  /** Such as `pairs.0.prescription.right.axis`. */
  readonly path: string;
  readonly message: string;
  readonly expected: string;
  readonly found: string;
  /** Where a page can have it; no part of the answer that is published. */
  readonly told?: FaultTold;
}

/** The name that was probably meant, to end what is expected; '' where there is none. */
export const didYouMean = (near: string | null): string =>
  near === null ? '' : ` (did you mean "${near}"?)`;
