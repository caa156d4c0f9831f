/** Rows of a table of frames: each a size in a colourway. Rows of one id make one frame. */
import type { ContentFault } from '../../catalogue/fault.ts';
import { slug } from '../../catalogue/reading/folders.ts';
import type { ImportField } from '../../catalogue/schema/importMapping.ts';
import type { Currency } from '../../catalogue/schema/money.ts';
import { numeric, truth } from '../creating/recipe.ts';
import type { CsvRow } from './csv.ts';
import { cellOf, fieldFault, type Table } from './mapping.ts';
import { plainNumber, plainPrice } from './written.ts';

/** A part of a frame with the row that gave it. */
export interface Given {
  readonly row: CsvRow;
  readonly value: Readonly<Record<string, unknown>>;
}

/** A frame as its rows give it. */
export interface FrameRows {
  readonly id: string;
  readonly first: CsvRow;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly sizes: readonly Given[];
  readonly colourways: readonly Given[];
  readonly story: string;
}

const NUMBERS = ['rimDepthMm', 'rimCoverMm', 'faceFormDeg', 'frameCurveD', 'massG'] as const;
const TEXTS = ['model', 'collection', 'summary', 'material', 'wearer', 'mounting', 'comesFitted'] as const;

/** Fields that all rows of a frame must agree on, in the order of its file. */
const OF_THE_FRAME: readonly ImportField[] = [
  'model',
  'collection',
  'summary',
  'price',
  'material',
  'wearer',
  'sun',
  'mounting',
  ...NUMBERS,
  'comesFitted',
  'inTheBox',
  'story',
];

/** Reads single cells. */
function reader(table: Table, currency: Currency) {
  const { decimal } = table.mapping;
  const text = (row: CsvRow, field: ImportField) => cellOf(table, row, field) ?? undefined;
  const number = (row: CsvRow, field: ImportField) => {
    const cell = text(row, field);
    return cell === undefined ? undefined : numeric(plainNumber(cell, decimal));
  };
  const price = (row: CsvRow, field: ImportField) => {
    const cell = text(row, field);
    return cell === undefined ? undefined : plainPrice(cell, decimal, currency);
  };
  return { text, number, price };
}

type Reader = ReturnType<typeof reader>;

function frameFields({ text, number, price }: Reader, row: CsvRow) {
  const sun = text(row, 'sun');
  const box = text(row, 'inTheBox');
  const parts = box?.split(/[;|]/.test(box) ? /[;|]/ : ',').map((part) => part.trim());
  return present({
    ...Object.fromEntries(TEXTS.map((field) => [field, text(row, field)])),
    price: price(row, 'price'),
    sun: sun === undefined ? undefined : truth(sun),
    ...Object.fromEntries(NUMBERS.map((field) => [field, number(row, field)])),
    inTheBox: parts?.filter((part) => part !== ''),
  });
}

function sizeOf({ text, number, price }: Reader, row: CsvRow): Given {
  const [a, dbl] = [number(row, 'a'), number(row, 'dbl')];
  const traced = text(row, 'traced');
  const value = {
    id: text(row, 'size') ?? `${Math.round(Number(a))}-${Math.round(Number(dbl))}`,
    a,
    b: number(row, 'b'),
    dbl,
    ed: number(row, 'ed'),
    temple: number(row, 'temple'),
    bridge: text(row, 'bridge'),
    outline: traced === undefined ? present({ family: text(row, 'family') }) : { traced },
    priceDifference: price(row, 'sizePriceDifference'),
  };
  return { row, value: present(value) };
}

function colourwayOf({ text, price }: Reader, row: CsvRow): Given {
  const name = text(row, 'colourway');
  const value = {
    code: text(row, 'colourwayCode') ?? (name === undefined ? undefined : slug(name)),
    name,
    front: text(row, 'colour'),
    priceDifference: price(row, 'colourwayPriceDifference'),
    stock: text(row, 'stock'),
  };
  return { row, value: present(value) };
}

const present = (value: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(value).filter(([, field]) => field !== undefined));

/** The rows by frame, and where rows of one frame disagree. */
export function gatherFrames(table: Table, currency: Currency) {
  const cells = reader(table, currency);
  const groups = Map.groupBy(
    table.csv.rows,
    (row) => cells.text(row, 'id') ?? slug(cells.text(row, 'model') ?? ''),
  );
  const faults: ContentFault[] = [];
  const frames = [...groups].map(([id, rows]): FrameRows => {
    const [first] = rows as [CsvRow, ...CsvRow[]];
    for (const row of rows) faults.push(...disagreements(table, cells, first, row));
    const parts = (of: (cells: Reader, row: CsvRow) => Given, key: string) => {
      const all = rows.map((row) => of(cells, row));
      return all.filter(({ value }, at) => all.findIndex((one) => one.value[key] === value[key]) === at);
    };
    const [sizes, colourways] = [parts(sizeOf, 'id'), parts(colourwayOf, 'code')];
    const story = cells.text(first, 'story') ?? '';
    return { id, first, fields: frameFields(cells, first), sizes, colourways, story };
  });
  return { frames, faults };
}

function disagreements(table: Table, { text }: Reader, first: CsvRow, row: CsvRow): ContentFault[] {
  return OF_THE_FRAME.filter((field) => text(row, field) !== text(first, field)).map((field) =>
    fieldFault(table, row, field, {
      code: 'rows-disagree',
      expected: `${text(first, field) ?? 'nothing'}, as in line ${first.line} of the same frame`,
      received: text(row, field) ?? 'nothing',
      hint: 'Write the same into all rows of a frame, or give the rows different ids.',
    }),
  );
}
