/** Frames from a table: new files, every fault at the cell that it comes from. */
import type { ContentFault, FaultDetail, FieldPath } from '../../catalogue/fault.ts';
import { explainIssue } from '../../catalogue/reading/issueFault.ts';
import { fileSchema } from '../../catalogue/schema/editorSchemas.ts';
import { ID_FORM } from '../../catalogue/schema/fields.ts';
import { FRAME_FIELDS, type ImportField } from '../../catalogue/schema/importMapping.ts';
import type { Currency } from '../../catalogue/schema/money.ts';
import { parseWith, type Schema } from '../../catalogue/schema/parse.ts';
import { commentedFile } from '../creating/commentedFile.ts';
import type { Csv, CsvRow } from './csv.ts';
import { type Plan, placeOf, type Shelf, type Step } from './files.ts';
import { type FrameRows, gatherFrames } from './frameRows.ts';
import { fieldFault, joinMapping, type Mapping, type Table } from './mapping.ts';

const OF_SIZE: Readonly<Record<string, ImportField>> = {
  id: 'size',
  outline: 'family',
  priceDifference: 'sizePriceDifference',
};
const OF_COLOURWAY: Readonly<Record<string, ImportField>> = {
  code: 'colourwayCode',
  name: 'colourway',
  front: 'colour',
  priceDifference: 'colourwayPriceDifference',
};

/** The row and the field that a place in a frame's file comes from. */
function sourceOf(table: Table, frame: FrameRows, path: FieldPath): { row: CsvRow; field: ImportField } {
  const [part, at, inner] = path;
  const name = String(inner ?? '');
  if (part === 'sizes') {
    const given = frame.sizes[Number(at ?? 0)];
    const traced = path[3] === 'traced' || table.columnOf.traced !== undefined;
    const field = name === 'outline' && traced ? 'traced' : (OF_SIZE[name] ?? (name as ImportField));
    return {
      row: given?.row ?? frame.first,
      field: known(table, field === 'size' ? ['size', 'a'] : [field]),
    };
  }
  if (part === 'colourways') {
    const field = OF_COLOURWAY[name] ?? (name as ImportField);
    const row = frame.colourways[Number(at ?? 0)]?.row ?? frame.first;
    return { row, field: known(table, field === 'colourwayCode' ? [field, 'colourway'] : [field]) };
  }
  return { row: frame.first, field: part === undefined ? 'id' : (part as ImportField) };
}

/** The first of the fields that has a column. */
function known({ columnOf }: Table, fields: readonly [ImportField, ...ImportField[]]): ImportField {
  return fields.find((field) => columnOf[field] !== undefined) ?? fields[0];
}

const fileOf = (shelf: Shelf, id: string) => `${shelf.folder.name}/frames/${id}.md`;

function writtenFrame({ fields, colourways, sizes }: FrameRows) {
  return {
    ...fields,
    colourways: colourways.map(({ value }) => value),
    sizes: sizes.map(({ value }) => value),
  };
}

/** What is to be written, or all that is wrong with the table. */
export function planFrames(csv: Csv, mapping: Mapping, shelf: Shelf, currency: Currency): Plan {
  const table = joinMapping(csv, mapping, FRAME_FIELDS);
  if (!('csv' in table)) return { ok: false, faults: table };
  const { frames, faults } = gatherFrames(table, currency);
  const schema = fileSchema('frame', currency);
  const taken = new Set(shelf.folder.files.map(({ path }) => path.toLowerCase()));
  for (const frame of frames)
    faults.push(...idFaults(table, frame, shelf, taken), ...shapeFaults(table, frame, schema));
  if (faults.length > 0) return { ok: false, faults };
  const steps = frames.map((frame): Step => {
    const text = commentedFile('frame', `frames/${frame.id}.md`, currency, writtenFrame(frame), frame.story);
    return { path: placeOf(shelf, fileOf(shelf, frame.id)), text, before: null, fresh: true };
  });
  const byFile = new Map(frames.map((frame) => [fileOf(shelf, frame.id), frame]));
  const explain = (fault: ContentFault) => {
    const frame = byFile.get(fault.file);
    if (frame === undefined) return fault;
    const { row, field } = sourceOf(table, frame, fault.path);
    return fieldFault(table, row, field, fault);
  };
  return { ok: true, steps, note: `${frames.length} frames from ${csv.rows.length} rows.`, explain };
}

function idFaults(
  table: Table,
  { id, first }: FrameRows,
  shelf: Shelf,
  taken: ReadonlySet<string>,
): ContentFault[] {
  const field = known(table, ['id', 'model']);
  const expected = 'an id of small letters a-z, digits and hyphens';
  if (!ID_FORM.test(id)) {
    const hint = 'Give the frame an id in a column of its own.';
    const received = id === '' ? 'nothing' : `"${id}"`;
    return [fieldFault(table, first, field, { code: 'bad-file-name', expected, received, hint })];
  }
  if (!taken.has(fileOf(shelf, id).toLowerCase())) return [];
  const detail: FaultDetail = {
    code: 'there-already',
    expected: 'a frame that the shop does not have yet',
    received: `"${id}"`,
    hint: 'Leave the row out; new prices come in with npm run import -- prices.',
  };
  return [fieldFault(table, first, field, detail)];
}

function shapeFaults(table: Table, frame: FrameRows, schema: Schema<unknown>): ContentFault[] {
  const value = writtenFrame(frame);
  const parsed = parseWith(schema, value);
  if (parsed.ok) return [];
  const told = parsed.issues.filter(({ path }) => !followsFrom(table, path, parsed.issues));
  return told.map((issue) => {
    const { row, field } = sourceOf(table, frame, issue.path);
    const detail = explainIssue(issue, value, null);
    return fieldFault(table, row, field, { ...detail, hint: inCells(detail) });
  });
}

/** An id or code without a column of its own is made from others: what is wrong with those is enough. */
function followsFrom(
  { columnOf }: Table,
  path: FieldPath,
  issues: readonly { readonly path: FieldPath }[],
): boolean {
  const [part, at, name] = path;
  const own = name === 'id' ? columnOf.size : name === 'code' ? columnOf.colourwayCode : 0;
  const others = issues.some((one) => one.path[0] === part && one.path[1] === at && one.path[2] !== name);
  return own === undefined && others;
}

/** Hints for YAML mean nothing in a table. */
const inCells = ({ code, hint }: FaultDetail) =>
  code === 'missing-field'
    ? 'Fill the cell in.'
    : hint.replace(', without quotes and without a unit', '').replace(', without quotes', '');
