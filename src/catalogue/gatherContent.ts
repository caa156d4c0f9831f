/** Reads each file with the schema of its folder. */

import { currencyDigits } from '../money/currency.ts';
import { checkCurrency } from './checks/shop.ts';
import type { Content, WordsFile } from './content.ts';
import type { ContentFault } from './fault.ts';
import { type Entry, faultAt, type Origin, readEntry, readOrigin } from './reading/entry.ts';
import { FOLDERS, type FolderKind, placeFile } from './reading/folders.ts';
import { decodeSource, faultOfFile, type SourceFile } from './reading/sourceText.ts';
import { coatingSchema } from './schema/coating.ts';
import { designSchema } from './schema/design.ts';
import { frameSchema } from './schema/frame.ts';
import { materialSchema } from './schema/material.ts';
import { type Currency, moneyIn } from './schema/money.ts';
import { outlineSchema } from './schema/outline.ts';
import { pageSchema } from './schema/page.ts';
import { parseWith, valueAt } from './schema/parse.ts';
import { promotionSchema } from './schema/promotion.ts';
import { shopSchema } from './schema/shop.ts';
import { tintSchema } from './schema/tint.ts';
import { wordsSchema } from './schema/words.ts';

/** A file whose place in the shop is known. */
interface Placed {
  readonly id: string;
  readonly origin: Origin;
}

/** The files of each folder, before any schema. */
interface Sorted {
  shop: Origin | null;
  readonly words: { readonly language: string; readonly origin: Origin }[];
  readonly entries: Record<FolderKind, Placed[]>;
  readonly faults: ContentFault[];
}

function sortFiles(files: readonly SourceFile[], root: string): Sorted {
  const entries = Object.fromEntries(
    Object.keys(FOLDERS).map((kind) => [kind, []]),
  ) as unknown as Sorted['entries'];
  const sorted: Sorted = { shop: null, words: [], entries, faults: [] };
  const taken = new Map<string, string>();
  for (const file of files.toSorted((a, b) => (a.path < b.path ? 1 : -1)).reverse()) {
    const placed = placeFile(root, file.path.slice(root.length + 1));
    if (placed.kind === 'ignored') continue;
    const twin = taken.get(file.path.toLowerCase());
    if (twin !== undefined) {
      sorted.faults.push(twinFault(file.path, twin));
      continue;
    }
    taken.set(file.path.toLowerCase(), file.path);
    if (placed.kind === 'fault') {
      sorted.faults.push(placed.fault);
      continue;
    }
    const decoded = decodeSource(file);
    const origin = decoded.ok ? readOrigin(decoded.source) : unreadable(file.path, decoded.fault);
    if (placed.kind === 'shop') sorted.shop = origin;
    else if (placed.kind === 'words') sorted.words.push({ language: placed.language, origin });
    else sorted.entries[placed.kind].push({ id: placed.id, origin });
  }
  return sorted;
}

/** A file without text still has its id, so that nothing that names it is called unknown. */
function unreadable(path: string, fault: ContentFault): Origin {
  return {
    source: { path, text: '' },
    yamlAt: 0,
    yaml: '',
    document: null,
    raw: undefined,
    body: '',
    faults: [fault],
  };
}

function twinFault(path: string, twin: string): ContentFault {
  return faultOfFile(path, {
    code: 'duplicate-file',
    expected: 'names that differ in more than small and capital letters',
    received: `"${path}" besides "${twin}"`,
    hint: 'Rename one of the two, or remove it.',
  });
}

/** The currency of the shop as far as its file can be read, and the fault where there is none such. */
function readCurrency(shop: Origin | null): { currency: Currency; fault: ContentFault | null } {
  const code = valueAt(shop?.raw, ['currency']);
  const detail = checkCurrency(code);
  const fault = shop === null || detail === null ? null : faultAt(shop, ['currency'], detail);
  const known = typeof code === 'string' ? currencyDigits(code) : null;
  return {
    currency:
      known === null ? { code: "the shop's currency", digits: null } : { code: String(code), digits: known },
    fault,
  };
}

/** All content of a shop, file by file, and what is wrong with single files. */
export function gatherContent(
  files: readonly SourceFile[],
  root: string,
): { content: Content; faults: ContentFault[] } {
  const { shop, words, entries, faults } = sortFiles(files, root);
  const { currency, fault } = readCurrency(shop);
  if (fault !== null) faults.push(fault);
  const money = moneyIn(currency);
  const readAll = <T>(kind: FolderKind, schema: Parameters<typeof parseWith<T>>[0]): Entry<T>[] =>
    entries[kind].map(({ id, origin }) => readEntry(id, origin, (raw) => parseWith(schema, raw)));
  const shopSchemaHere = shopSchema(money);
  const wordsSchemaHere = wordsSchema();
  const content: Content = {
    root,
    shop: shop === null ? null : readEntry('shop', shop, (raw) => parseWith(shopSchemaHere, raw)),
    frames: readAll('frames', frameSchema(money)),
    outlines: readAll('outlines', outlineSchema()),
    designs: readAll('designs', designSchema(money)),
    materials: readAll('materials', materialSchema(money)),
    tints: readAll('tints', tintSchema(money)),
    coatings: readAll('coatings', coatingSchema(money)),
    promotions: readAll('promotions', promotionSchema(money)),
    pages: readAll('pages', pageSchema()),
    words: words.map(({ language, origin }): WordsFile => {
      const entry = readEntry(language, origin, (raw) => parseWith(wordsSchemaHere, raw));
      return { language, entry };
    }),
  };
  for (const one of allEntries(content)) faults.push(...one.faults);
  return { content, faults };
}

function allEntries(content: Content): readonly Entry<unknown>[] {
  const { shop, words, root: _, ...folders } = content;
  return [
    ...(shop === null ? [] : [shop]),
    ...words.map(({ entry }) => entry),
    ...Object.values(folders).flat(),
  ];
}
