/** What may be expected at a place of a written prescription; whoever tells it has the words. */
export const WANTED = [
  'sign',
  'eye',
  'eye-once',
  'sphere',
  'sphere-first',
  'cylinder',
  'sphere-sign',
  'cylinder-sign',
  'sphere-range',
  'cylinder-range',
  'axis',
  'axis-range',
  'add-range',
  'add-once',
  'add-once-both',
  'add-place',
  'prism-range',
  'base',
  'meridian',
  'end',
  'bracket',
] as const;

/** What was expected, with the figures of its range. */
export interface Wanted {
  readonly code: (typeof WANTED)[number];
  readonly figures: Readonly<Record<string, number>>;
}

/** What is wrong in a written prescription, as data: where, what was expected there and what was found. */
export interface NotationFault {
  readonly code:
    | 'unknown-sign'
    | 'no-eye'
    | 'eye-twice'
    | 'no-power'
    | 'no-sign'
    | 'no-axis'
    | 'axis-range'
    | 'power-range'
    | 'add-range'
    | 'prism-range'
    | 'no-base'
    | 'left-over'
    | 'twice';
  /** Offset of the first wrong character in the text, from 0; its length at the end of the text. */
  readonly start: number;
  /** Offset just behind what is wrong. */
  readonly end: number;
  readonly expected: Wanted;
  /** The text found there; empty at the end. */
  readonly found: string;
}
