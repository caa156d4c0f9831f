/** What can be wrong with the shop's content: errors as data. printFaults.ts makes the text. */

/** Every kind of fault with its headline. A code is permanent: it is what tests and docs name. */
export const FAULTS = {
  // the file
  'too-large': 'this file is too large for a content file',
  'not-text': 'this is not a text file',
  'not-utf8': 'this file is not in UTF-8',
  unreadable: 'this file cannot be read',
  'missing-file': 'a file is missing',
  'unknown-file': 'nothing reads this file',
  'bad-file-name': 'the file name cannot be an id',
  'duplicate-file': 'two files have the same id',
  'no-front-matter': 'the file does not begin with its fields',
  'open-front-matter': 'the fields are not closed off',
  'empty-body': 'the text below the fields is missing',
  'dead-link': 'this link leads nowhere',
  'outside-picture': 'this picture would be fetched from another site',
  'missing-picture': 'this picture is not there',
  'not-a-picture': 'this file is not the picture that its name says',
  // YAML
  'yaml-syntax': 'this is not well-formed YAML',
  'yaml-tab': 'a tab indents this line',
  'yaml-tag': 'a YAML tag stands here',
  'yaml-directive': 'a YAML directive stands here',
  'yaml-alias': 'this alias cannot be followed',
  'yaml-too-much': 'this nests or repeats too much',
  'duplicate-key': 'this field is given twice',
  // one field
  'missing-field': 'a field is missing',
  'unknown-key': 'this field is not known',
  'wrong-type': 'this is the wrong kind of value',
  'wrong-value': 'this value is not possible',
  'wrong-price': 'this is not a price',
  'too-many-decimals': 'this price has too many decimals',
  'wrong-date': 'this is not a date',
  'unknown-currency': 'this currency is not known',
  'unknown-time-zone': 'this time zone is not known',
  // across fields and files
  'former-name': 'this has another name now',
  'unknown-reference': 'this names something that the shop does not have',
  'duplicate-id': 'this id is used twice',
  'taken-address': 'another page of the site has this address',
  'size-disagrees': 'the name of the size disagrees with its measurements',
  'impossible-outline': 'no outline of this family has these measurements',
  'trace-disagrees': 'the traced outline disagrees with the measurements',
  'bad-trace': 'this is not the outline of a lens',
  'hole-outside': 'this hole is not inside the lens',
  'dates-reversed': 'the promotion ends before it begins',
  'code-taken': 'two promotions answer to this code at the same time',
  'not-ascending': 'these are not in ascending order',
  'parts-disagree': 'these fields do not go together',
  'not-served': 'the shop does not send there',
  'gift-not-offered': 'the shop does not offer the lenses that it gives',
  // translations
  'unknown-language': 'the shop does not have this language',
  'nothing-to-translate': 'this translates a file that is not there',
  'not-translated': 'a text is not translated',
  'translation-left-over': 'this translates what is not there any more',
  'other-slots': 'the slots of this text are not those of the first language',
  'never-usable': 'no frame and no pair of lenses can ever use this option',
  // an import
  'csv-syntax': 'this is not a well-formed CSV file',
  'missing-column': 'the mapping names a column that is not there',
  'unmapped-field': 'nothing gives this field',
  'rows-disagree': 'two rows disagree about one thing',
  'there-already': 'the shop has this already',
  'not-alone': 'this cannot be changed without touching the rest',
} as const;

export type FaultCode = keyof typeof FAULTS;

/** Keys and indexes that lead to a value in a file. */
export type FieldPath = readonly (string | number)[];

/** One thing wrong, with its place. */
export interface ContentFault {
  readonly code: FaultCode;
  /** Path from the project's folder, with forward slashes. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units, a byte-order mark not counted. */
  readonly column: number;
  /** How much of the line is meant; at least 1. */
  readonly length: number;
  /** The line as it stands in the file, without its end. */
  readonly sourceLine: string;
  readonly path: FieldPath;
  readonly expected: string;
  readonly received: string;
  /** What to do; holds the corrected value where it can be computed. */
  readonly hint: string;
}

/** What a check says; the place is added by whoever knows the file. */
export type FaultDetail = Pick<ContentFault, 'code' | 'expected' | 'received' | 'hint'>;

/** A detail with its place in a text that is part of a file: offsets, the end excluded. */
export interface PlacedDetail {
  readonly start: number;
  readonly end: number;
  readonly detail: FaultDetail;
}

/** By file, then by place in it. */
export function compareFaults(a: ContentFault, b: ContentFault): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.line - b.line || a.column - b.column || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);
}
