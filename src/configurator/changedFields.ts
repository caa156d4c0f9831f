/** What advice may change, by its field. */
export const CHANGED = ['size', 'colourway', 'design', 'material', 'tint', 'coating', 'blank'] as const;

/** The fields that advice may change. */
export type ChangedField = (typeof CHANGED)[number];

/** Whether a field is one that advice may change. */
export const isChanged = (field: string): field is ChangedField =>
  (CHANGED as readonly string[]).includes(field);
