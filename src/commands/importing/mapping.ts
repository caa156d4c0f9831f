/** Reads the mapping of an import, and a row by it. */
import type { ContentFault, FaultDetail } from '../../catalogue/fault.ts';
import { listNames, nearest } from '../../catalogue/nearest.ts';
import { faultAt, readEntry, readOrigin } from '../../catalogue/reading/entry.ts';
import type { Origin } from '../../catalogue/reading/origin.ts';
import { decodeSource } from '../../catalogue/reading/sourceText.ts';
import {
  type ImportField,
  type ImportMapping,
  importMappingSchema,
} from '../../catalogue/schema/importMapping.ts';
import { type Csv, type CsvRow, cellFault } from './csv.ts';

/** A mapping with its file, so that it can be pointed at. */
export interface Mapping extends ImportMapping {
  readonly origin: Origin;
}

type Read =
  | { readonly ok: true; readonly mapping: Mapping }
  | { readonly ok: false; readonly faults: readonly ContentFault[] };

/** The mapping of a file. */
export function readMapping(path: string, bytes: Uint8Array): Read {
  const decoded = decodeSource({ path, bytes });
  if (!decoded.ok) return { ok: false, faults: [decoded.fault] };
  const entry = readEntry('mapping', readOrigin(decoded.source), importMappingSchema());
  if (entry.value === null) return { ok: false, faults: entry.faults };
  return { ok: true, mapping: { ...entry.value, origin: entry.origin } };
}

/** A CSV file seen through a mapping. */
export interface Table {
  readonly csv: Csv;
  readonly mapping: Mapping;
  /** Column of each field that has one. */
  readonly columnOf: Readonly<Partial<Record<ImportField, number>>>;
}

/** Joins both; refused are columns that are not there, fields that this import does not know, and fields given twice. */
export function joinMapping(
  csv: Csv,
  mapping: Mapping,
  known: readonly ImportField[],
): Table | readonly ContentFault[] {
  const faults: ContentFault[] = [];
  const columnOf: Partial<Record<ImportField, number>> = {};
  const add = (path: (string | number)[], detail: FaultDetail, at: 'key' | 'value') =>
    faults.push(faultAt(mapping.origin, path, detail, at));
  for (const [heading, field] of Object.entries(mapping.columns)) {
    const column = csv.headings.indexOf(heading);
    if (column < 0) add(['columns', heading], missingColumn(heading, csv.headings), 'key');
    else if (!known.includes(field)) add(['columns', heading], strangeField(field, known), 'value');
    else if (columnOf[field] !== undefined) add(['columns', heading], givenTwice(field), 'value');
    else columnOf[field] = column;
  }
  for (const field of [...Object.keys(mapping.fixed), ...Object.keys(mapping.values)]) {
    const part = field in mapping.fixed ? 'fixed' : 'values';
    if (!known.includes(field as ImportField)) add([part, field], strangeField(field, known), 'key');
  }
  return faults.length > 0 ? faults : { csv, mapping, columnOf };
}

function missingColumn(heading: string, headings: readonly string[]): FaultDetail {
  const meant = nearest(heading, headings);
  const hint = meant === null ? 'Write the heading as it stands in the file.' : `Did you mean "${meant}"?`;
  return {
    code: 'missing-column',
    expected: `a heading of the file: ${listNames(headings)}`,
    received: `"${heading}"`,
    hint,
  };
}

function strangeField(field: string, known: readonly string[]): FaultDetail {
  const meant = nearest(field, known);
  const hint = meant === null ? 'Remove the line.' : `Did you mean ${meant}?`;
  return {
    code: 'unknown-key',
    expected: `a field of this import: ${known.join(', ')}`,
    received: `"${field}"`,
    hint,
  };
}

function givenTwice(field: string): FaultDetail {
  const hint = 'Remove one of the two lines.';
  return { code: 'duplicate-key', expected: `one column for ${field}`, received: 'a second one', hint };
}

/** What a row says of a field: its cell, in the shop's words, or what is the same in every row. Null for nothing. */
export function cellOf({ mapping, columnOf }: Table, row: CsvRow, field: ImportField): string | null {
  const column = columnOf[field];
  const cell = column === undefined ? '' : (row.cells[column] ?? '').trim();
  if (cell !== '') return mapping.values[field]?.[cell] ?? cell;
  const fixed = mapping.fixed[field];
  return fixed === undefined ? null : String(fixed);
}

/** A fault about a field: at its cell, or in the mapping where no cell gave it. */
export function fieldFault(table: Table, row: CsvRow, field: ImportField, detail: FaultDetail): ContentFault {
  const { csv, mapping, columnOf } = table;
  const column = columnOf[field];
  const isCell = column !== undefined && (row.cells[column] !== '' || mapping.fixed[field] === undefined);
  if (isCell) return cellFault(csv, row, column, [csv.headings[column] ?? field], detail);
  if (mapping.fixed[field] !== undefined) return faultAt(mapping.origin, ['fixed', field], detail);
  return faultAt(
    mapping.origin,
    ['columns'],
    { ...detail, code: 'unmapped-field', hint: unmapped(field) },
    'key',
  );
}

const unmapped = (field: string) =>
  `Name the column of ${field} below columns, or write ${field} below fixed.`;
