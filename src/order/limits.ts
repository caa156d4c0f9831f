/** What an order file has room for; the form of an order tells these before a reader refuses. */

/** Letters of a text on one line, UTF-16 units. */
export const MOST_LINE_LETTERS = 300;
/** Letters of prose, UTF-16 units. */
export const MOST_PROSE_LETTERS = 5000;
export const MOST_ADDRESS_LINES = 12;
/** Base curves of glasses that somebody wears, D. */
export const WORN_BASE_CURVES_D = { least: 0, most: 12 } as const;
/** Bytes of all attachments of an order together. */
export const MOST_ATTACHED_BYTES = 12_000_000;
/** Attachments of one prescription. */
export const MOST_ATTACHMENTS = 4;
/** Letters of an attachment's name. */
export const MOST_NAME_LETTERS = 120;
