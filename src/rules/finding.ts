/** What a rule says of a package: a message id and figures, never a sentence. */

export const LEVELS = ['stop', 'caution', 'note'] as const;
/** `stop`: cannot be made or must not be sold so; `caution`: to be confirmed; `note`: to be known. */
export type Level = (typeof LEVELS)[number];

/** Slots of the message: numbers (with their unit in the key, rounded already) and names. */
export type Figures = Readonly<Record<string, number | string>>;

export interface Outcome {
  /** Key in the words file below the rule's id: `rule.<id>.<message>`. */
  readonly message: string;
  readonly level: Level;
  readonly eye: 'right' | 'left' | 'both';
  readonly figures: Figures;
}
