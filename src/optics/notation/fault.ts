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
  /** In words, with the allowed range where there is one. */
  readonly expected: string;
  /** The text found there; empty at the end. */
  readonly found: string;
}
