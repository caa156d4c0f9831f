/** One thing wrong with a request. */
export interface Fault {
  /** Such as `pairs.0.prescription.right.axis`. */
  readonly path: string;
  readonly message: string;
  readonly expected: string;
  readonly found: string;
}
