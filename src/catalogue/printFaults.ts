/** Makes the text of content faults: place, source line with a caret, expected, found, what to do. */
import { type ContentFault, FAULTS } from './fault.ts';

/** Widest excerpt of a source line, in characters. */
const WIDEST = 100;

/** Content may come from elsewhere: a control or direction character must not act in the owner's terminal. */
const UNPRINTABLE = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

function printable(text: string): string {
  return text.replaceAll('\t', '→').replace(UNPRINTABLE, '�');
}

/** The part of the line around the caret, with the caret's line below it. */
function excerpt(fault: ContentFault): string[] {
  // A fault at the end of the file may lie beyond the line that is shown for it.
  const start = Math.max(0, Math.min(fault.column - 1, fault.sourceLine.length));
  const from = fault.sourceLine.length <= WIDEST || start < WIDEST - 20 ? 0 : start - 40;
  const cut = fault.sourceLine.slice(from, from + WIDEST);
  const lead = from > 0 ? '…' : '';
  const tail = from + WIDEST < fault.sourceLine.length ? '…' : '';
  const width = Math.max(1, Math.min(fault.length, cut.length - (start - from)));
  const number = String(fault.line);
  const pad = ' '.repeat(Math.max(0, lead.length + start - from));
  return [
    `  ${number} | ${lead}${printable(cut)}${tail}`.trimEnd(),
    `  ${' '.repeat(number.length)} | ${pad}${'^'.repeat(width)}`,
  ];
}

/** A file without text, or one that is not there, has no line to show. */
function isWholeFile({ sourceLine, line, column }: ContentFault): boolean {
  return sourceLine === '' && line === 1 && column === 1;
}

/** The path as it is written in faults: `sizes.0.a`. */
function pathText(fault: Pick<ContentFault, 'path'>): string {
  return printable(fault.path.join('.'));
}

/** One fault as a few lines of text, without a line end after the last. */
export function printFault(fault: ContentFault): string {
  const path = fault.path.length === 0 ? '' : `${pathText(fault)}: `;
  return [
    `${printable(fault.file)}:${fault.line}:${fault.column} ${path}${FAULTS[fault.code]} [${fault.code}]`,
    ...(isWholeFile(fault) ? [] : excerpt(fault)),
    `  expected: ${printable(fault.expected)}`,
    `  found:    ${printable(fault.received)}`,
    `  to do:    ${printable(fault.hint)}`,
  ].join('\n');
}

/** All faults, and how many there are. Build, dev and `npm run check` print this same text. */
export function printFaults(faults: readonly ContentFault[]): string {
  const files = new Set(faults.map((fault) => fault.file)).size;
  const count =
    `${faults.length} ${faults.length === 1 ? 'fault' : 'faults'} in ${files} ` +
    `${files === 1 ? 'file' : 'files'} of the shop's content. Nothing is built until all are mended.`;
  return [...faults.map(printFault), count].join('\n\n');
}
