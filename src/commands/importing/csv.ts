/** A CSV file as rows of cells, each of which can be pointed at. */
import { type CsvError, parse } from 'csv-parse/sync';
import type { ContentFault, FaultDetail, FieldPath } from '../../catalogue/fault.ts';
import { faultIn, faultOfFile, type SourceText } from '../../catalogue/reading/sourceText.ts';

export interface CsvRow {
  /** From 1. */
  readonly line: number;
  /** Where it begins in the text. */
  readonly start: number;
  readonly cells: readonly string[];
}

export interface Csv {
  readonly source: SourceText;
  readonly separator: string;
  readonly headings: readonly string[];
  readonly rows: readonly CsvRow[];
}

/** How the file is written; a null separator is the one that its first line has most of. */
export interface CsvForm {
  readonly separator: ',' | ';' | 'tab' | null;
  readonly encoding: 'utf-8' | 'windows-1252';
}

type Read =
  | { readonly ok: true; readonly csv: Csv }
  | { readonly ok: false; readonly faults: readonly ContentFault[] };

const MOST_BYTES = 64 * 1024 * 1024;

function decode(path: string, bytes: Uint8Array, encoding: string): SourceText | ContentFault {
  const expected = `a CSV file in ${encoding}`;
  if (bytes.length > MOST_BYTES)
    return faultOfFile(path, {
      code: 'too-large',
      expected,
      received: 'more than 64 MB',
      hint: 'Split the file.',
    });
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return { path, text: text.replace(/\r\n?/g, '\n') };
  } catch {
    const hint = 'Save it as "CSV UTF-8", or write encoding: windows-1252 into the mapping.';
    return faultOfFile(path, { code: 'not-utf8', expected, received: 'other bytes', hint });
  }
}

function mostUsed(text: string): string {
  const first = text.slice(0, Math.max(0, text.indexOf('\n')) || text.length);
  const count = (sign: string) => first.split(sign).length;
  return [',', ';', '\t'].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}

/** Reads the file: headings in its first row. Every row must have as many cells as there are headings. */
export function readCsv(path: string, bytes: Uint8Array, { separator, encoding }: CsvForm): Read {
  const source = decode(path, bytes, encoding);
  if ('code' in source) return { ok: false, faults: [source] };
  const sign = separator === 'tab' ? '\t' : (separator ?? mostUsed(source.text));
  const rows = splitRows(source, sign);
  if (!Array.isArray(rows)) return { ok: false, faults: [rows as ContentFault] };
  const [head, ...body] = rows as CsvRow[];
  if (head === undefined || body.length === 0) {
    const detail = { code: 'csv-syntax', expected: 'a row of headings and a row below it' } as const;
    const hint = 'Export the table again, with its headings.';
    return { ok: false, faults: [faultOfFile(path, { ...detail, received: 'nothing', hint })] };
  }
  const csv: Csv = { source, separator: sign, headings: head.cells, rows: body };
  const faults = [
    ...twice(csv, head),
    ...body.filter((row) => row.cells.length !== head.cells.length).map(ragged(csv)),
  ];
  return faults.length > 0 ? { ok: false, faults } : { ok: true, csv };
}

interface Parsed {
  readonly record: readonly string[];
  readonly raw: string;
}

function splitRows(source: SourceText, separator: string): CsvRow[] | ContentFault {
  const { text } = source;
  try {
    const options = {
      delimiter: separator,
      record_delimiter: '\n',
      relax_column_count: true,
      raw: true,
      trim: true,
    };
    const records = parse(text, { ...options, skip_empty_lines: true, info: true }) as unknown as Parsed[];
    let cursor = 0;
    let line = 1;
    let counted = 0;
    return records
      .map(({ record, raw }) => {
        const at = text.indexOf(raw, cursor);
        cursor = at + raw.length;
        const start = at + (/^\n*/.exec(raw)?.[0].length ?? 0);
        for (; counted < start; counted += 1) if (text[counted] === '\n') line += 1;
        return { line, start, cells: record };
      })
      .filter(({ cells }) => cells.some((cell) => cell !== ''));
  } catch (error) {
    return syntaxFault(source, error as CsvError);
  }
}

function syntaxFault(source: SourceText, error: CsvError): ContentFault {
  const line = Number(error['lines'] ?? 1);
  const start = source.text
    .split('\n')
    .slice(0, line - 1)
    .reduce((sum, one) => sum + one.length + 1, 0);
  const open = error.code === 'CSV_QUOTE_NOT_CLOSED';
  return faultIn(source, start, source.text.length, [], {
    code: 'csv-syntax',
    expected: 'cells with quotes at both ends or none, quotes inside written twice',
    received: open ? 'a quote that is never closed' : 'a quote in the middle of a cell',
    hint: open
      ? 'Close it, or remove it.'
      : 'Put the whole cell in quotes and write the inner ones twice: "a ""b"" c".',
  });
}

const ragged = (csv: Csv) => (row: CsvRow) =>
  cellFault(csv, row, 0, [], {
    code: 'csv-syntax',
    expected: `${csv.headings.length} cells, one for each heading`,
    received: String(row.cells.length),
    hint: 'Put cells that hold the separator in quotes.',
  });

function twice(csv: Csv, head: CsvRow): ContentFault[] {
  return csv.headings.flatMap((heading, at) =>
    heading === '' || csv.headings.indexOf(heading) === at
      ? []
      : [
          cellFault(csv, head, at, [], {
            code: 'csv-syntax',
            expected: 'headings that differ',
            received: `"${heading}" twice`,
            hint: 'Rename one of the two.',
          }),
        ],
  );
}

/** Where a cell begins in a row that stands in one line; the row's beginning where it cannot be told. */
function cellStart({ source: { text }, separator }: Csv, { start, cells }: CsvRow, column: number): number {
  const end = text.indexOf('\n', start);
  const line = text.slice(start, end < 0 ? text.length : end);
  let [at, quoted, seen] = [0, false, 0];
  for (; at < line.length && seen < column; at += 1) {
    if (line[at] === '"') quoted = !quoted;
    else if (line[at] === separator && !quoted) seen += 1;
  }
  return seen === column && column < cells.length ? start + at : start;
}

/** A fault at a cell. */
export function cellFault(
  csv: Csv,
  row: CsvRow,
  column: number,
  path: FieldPath,
  detail: FaultDetail,
): ContentFault {
  const start = cellStart(csv, row, column);
  return faultIn(csv.source, start, start + Math.max(1, row.cells[column]?.length ?? 1), path, detail);
}
