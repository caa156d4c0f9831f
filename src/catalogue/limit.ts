/** Declared compatibility: plain fields, each with its reason. What physics forbids is code, not content. */

export const OPTION_KINDS = ['design', 'material', 'tint', 'coating', 'mounting', 'wearer', 'frame'] as const;
export type OptionKind = (typeof OPTION_KINDS)[number];

/** Holds for the option whose file it stands in. Within one kind any of the ids counts; all kinds must agree. */
export interface DeclaredLimit {
  /** `only-with`: each named kind must be one of the ids. `not-with`: refused when every named kind is one of them. */
  readonly kind: 'only-with' | 'not-with';
  readonly ids: Readonly<Partial<Record<OptionKind, readonly string[]>>>;
  /** `stop` unless the owner says `caution`. */
  readonly level: 'stop' | 'caution';
  /** The owner's sentence for the shopper. */
  readonly because: string;
}

/** An extra charge from a strength on. */
export interface Surcharge {
  readonly label: string;
  /** What is compared, in absolute value, of the stronger eye. */
  readonly of: 'strongest-meridian' | 'cylinder' | 'prism' | 'add';
  /** Charged when above this (exclusive), D or prism dioptres. */
  readonly above: number;
  /** And up to this (inclusive); null: without end. */
  readonly upTo: number | null;
  /** Minor units a pair. */
  readonly priceMinor: number;
}

/** What every lens option has in common. */
export interface OptionText {
  readonly id: string;
  readonly name: string;
  /** One sentence for the worksheet. */
  readonly summary: string;
  /** HTML made from the file's Markdown: what it is for, what it gains, what it costs besides money. */
  readonly story: string;
  /** Minor units a pair, added to the lenses. */
  readonly priceMinor: number;
  readonly limits: readonly DeclaredLimit[];
}
