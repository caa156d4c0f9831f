/** A quote is a list of explained lines; the total is their sum and nothing else. */

export const LINE_KINDS = ['frame', 'lenses', 'option', 'surcharge', 'promotion', 'shipping', 'tax'] as const;
export type LineKind = (typeof LINE_KINDS)[number];

export interface QuoteLine {
  readonly kind: LineKind;
  /** Index of the pair it belongs to; null: the whole order. */
  readonly pair: number | null;
  readonly label: string;
  /** Minor units; below 0 for a credit. */
  readonly amount: number;
  /** Where the amount comes from: the content entry, such as `promotions/first-light`, in the shop's folder. */
  readonly source: string;
}
