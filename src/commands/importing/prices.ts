/** A price list: new prices of frames, options and ready-made lenses by their ids. */
import { type Content, sound } from '../../catalogue/content.ts';
import type { ContentFault, FaultDetail, FieldPath } from '../../catalogue/fault.ts';
import { listNames, nearest } from '../../catalogue/nearest.ts';
import { explainIssue } from '../../catalogue/reading/issueFault.ts';
import { PRICE_FIELDS } from '../../catalogue/schema/importMapping.ts';
import { type Currency, moneyIn } from '../../catalogue/schema/money.ts';
import { parseWith, valueAt } from '../../catalogue/schema/parse.ts';
import { withText } from '../editFields.ts';
import type { Csv, CsvRow } from './csv.ts';
import { exactText, type Plan, placeOf, type Shelf, type Step } from './files.ts';
import { cellOf, fieldFault, joinMapping, type Mapping, type Table } from './mapping.ts';
import { plainPrice } from './written.ts';

/** A price of the shop: what has it, in which file and where. */
interface Priced {
  readonly kind: string;
  readonly file: string;
  readonly path: FieldPath;
  readonly price: unknown;
}

const KINDS = ['frame', 'design', 'material', 'tint', 'coating', 'stock'] as const;

/** Every price by the id that it is named by. */
function pricesOf(content: Content): ReadonlyMap<string, readonly Priced[]> {
  const prices = new Map<string, Priced[]>();
  const add = (id: string, one: Priced) => prices.set(id, [...(prices.get(id) ?? []), one]);
  const { frames, designs, materials, tints, coatings } = content;
  for (const [kind, entries] of Object.entries({
    frame: frames,
    design: designs,
    material: materials,
    tint: tints,
    coating: coatings,
  }))
    for (const { id, origin } of entries)
      add(id, { kind, file: origin.source.path, path: ['price'], price: valueAt(origin.raw, ['price']) });
  for (const { origin, value } of sound(materials))
    for (const [at, { id }] of value.stock.entries()) {
      const path = ['stock', at, 'price'];
      add(id, { kind: 'stock', file: origin.source.path, path, price: valueAt(origin.raw, path) });
    }
  return prices;
}

/** What is to be written where, or all that is wrong with the list. */
export function planPrices(
  csv: Csv,
  mapping: Mapping,
  shelf: Shelf,
  content: Content,
  currency: Currency,
): Plan {
  const table = joinMapping(csv, mapping, PRICE_FIELDS);
  if (!('csv' in table)) return { ok: false, faults: table };
  const prices = pricesOf(content);
  const faults: ContentFault[] = [];
  const found = csv.rows.map((row) => readRow(table, row, prices, currency));
  const taken = new Map<Priced, CsvRow>();
  for (const one of found) {
    if ('faults' in one) faults.push(...one.faults);
    else if (taken.has(one.target))
      faults.push(fieldFault(table, one.row, 'id', again(taken.get(one.target))));
    else taken.set(one.target, one.row);
  }
  const texts = new Map<string, string>();
  let same = 0;
  for (const one of found) {
    if ('faults' in one) continue;
    const { target, price, row } = one;
    if (target.price === price) same += 1;
    else {
      const text = withText(texts.get(target.file) ?? exactText(shelf, target.file), target.path, price);
      if (text === null) faults.push(fieldFault(table, row, 'price', notAlone(target)));
      else texts.set(target.file, text);
    }
  }
  if (faults.length > 0) return { ok: false, faults };
  const steps = [...texts].map(
    ([file, text]): Step => ({
      path: placeOf(shelf, file),
      text,
      before: exactText(shelf, file),
      fresh: false,
    }),
  );
  return { ok: true, steps, note: `${found.length - same} prices change, ${same} stay as they are.` };
}

type Row =
  | { readonly row: CsvRow; readonly target: Priced; readonly price: string }
  | { readonly faults: readonly ContentFault[] };

function readRow(
  table: Table,
  row: CsvRow,
  prices: ReadonlyMap<string, readonly Priced[]>,
  currency: Currency,
): Row {
  const faults: ContentFault[] = [];
  const id = cellOf(table, row, 'id') ?? '';
  const kind = cellOf(table, row, 'kind');
  const targets = (prices.get(id) ?? []).filter((one) => kind === null || one.kind === kind);
  const [target] = targets;
  if (kind !== null && !KINDS.some((known) => known === kind))
    faults.push(fieldFault(table, row, 'kind', strangeKind(kind)));
  else if (target === undefined) faults.push(fieldFault(table, row, 'id', strangeId(id, kind, prices)));
  else if (targets.length > 1) faults.push(fieldFault(table, row, 'id', several(id, targets)));
  const written = cellOf(table, row, 'price');
  const price = written === null ? undefined : plainPrice(written, table.mapping.decimal, currency);
  const parsed = parseWith(moneyIn(currency).price, price);
  if (!parsed.ok)
    for (const issue of parsed.issues) {
      const detail = explainIssue({ ...issue, path: ['price'] }, { price }, null);
      const received = written === null ? 'nothing' : `"${written}"`;
      faults.push(fieldFault(table, row, 'price', { ...detail, received }));
    }
  if (faults.length > 0 || target === undefined || price === undefined) return { faults };
  return { row, target, price };
}

function strangeKind(kind: string): FaultDetail {
  const meant = nearest(kind, KINDS);
  const hint =
    meant === null ? 'Write one of these, or translate it below values.' : `Did you mean ${meant}?`;
  return { code: 'wrong-value', expected: listNames(KINDS), received: `"${kind}"`, hint };
}

function strangeId(
  id: string,
  kind: string | null,
  prices: ReadonlyMap<string, readonly Priced[]>,
): FaultDetail {
  const known = [...prices]
    .filter(([, of]) => kind === null || of.some((one) => one.kind === kind))
    .map(([one]) => one);
  const meant = nearest(id, known);
  return {
    code: 'unknown-reference',
    expected: `the id of ${kind === null ? 'a frame or option' : `a ${kind}`} of this shop`,
    received: id === '' ? 'nothing' : `"${id}"`,
    hint: meant === null ? 'Write the name of its file without the ending.' : `Did you mean "${meant}"?`,
  };
}

const several = (id: string, targets: readonly Priced[]): FaultDetail => ({
  code: 'unknown-reference',
  expected: 'an id that names one thing, or a column with the field kind',
  received: `"${id}", which is ${listNames(targets.map(({ kind }) => `a ${kind}`)).replace(' or ', ' and ')}`,
  hint: 'Add a column with the kind, and name it in the mapping.',
});

const again = (first: CsvRow | undefined): FaultDetail => ({
  code: 'duplicate-id',
  expected: 'each id once',
  received: `it again, after line ${first?.line}`,
  hint: 'Remove one of the two rows.',
});

const notAlone = ({ file }: Priced): FaultDetail => ({
  code: 'not-alone',
  expected: `a price in quotes of its own in ${file}`,
  received: 'one that other fields share',
  hint: 'Change it in the file by hand.',
});
