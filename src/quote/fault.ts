/** One thing wrong with a request. */
export interface Fault {
  /** Such as `pairs.0.prescription.right.axis`. */
  readonly path: string;
  readonly message: string;
  readonly expected: string;
  readonly found: string;
}

/** The name that was probably meant, to end what is expected; '' where there is none. */
export const didYouMean = (near: string | null): string =>
  near === null ? '' : ` (did you mean "${near}"?)`;
