/** Reads each file with the schema of its folder. */

import { currencyDigits } from '../money/currency.ts';
import type { Content } from './content.ts';
import type { ContentFault } from './fault.ts';
import { readEntry } from './reading/entry.ts';
import type { FolderKind } from './reading/folders.ts';
import type { Entry, Origin } from './reading/origin.ts';
import { sortFiles } from './reading/sortFiles.ts';
import type { SourceFile } from './reading/sourceText.ts';
import { coatingSchema } from './schema/coating.ts';
import { designSchema } from './schema/design.ts';
import { frameSchema } from './schema/frame.ts';
import { materialSchema } from './schema/material.ts';
import { type Currency, moneyIn } from './schema/money.ts';
import { outlineSchema } from './schema/outline.ts';
import { pageSchema } from './schema/page.ts';
import { type Schema, valueAt } from './schema/parse.ts';
import { promotionSchema } from './schema/promotion.ts';
import { shopSchema } from './schema/shop.ts';
import { tintSchema } from './schema/tint.ts';
import { translationSchema } from './schema/translation.ts';
import { wordsSchema } from './schema/words.ts';
import { TEXTS } from './translation/texts.ts';

/** The currency of the shop as far as its file can be read. */
function readCurrency(shop: Origin | null): Currency {
  const code = valueAt(shop?.raw, ['currency']);
  const digits = typeof code === 'string' ? currencyDigits(code) : null;
  return digits === null ? { code: "the shop's currency", digits } : { code: String(code), digits };
}

/** All content of a shop, file by file, and what is wrong with single files. */
export function gatherContent(
  files: readonly SourceFile[],
  root: string,
): { content: Content; faults: ContentFault[] } {
  const { shop, words, translations, entries, pictures, faults } = sortFiles(files, root);
  const money = moneyIn(readCurrency(shop));
  const readAll = <T>(kind: FolderKind, schema: Schema<T>): Entry<T>[] =>
    entries[kind].map(({ id, origin }) => readEntry(id, origin, schema));
  const wordsTree = wordsSchema();
  const content: Content = {
    root,
    shop: shop === null ? null : readEntry('shop', shop, shopSchema(money)),
    frames: readAll('frames', frameSchema(money)),
    outlines: readAll('outlines', outlineSchema()),
    designs: readAll('designs', designSchema(money)),
    materials: readAll('materials', materialSchema(money)),
    tints: readAll('tints', tintSchema(money)),
    coatings: readAll('coatings', coatingSchema(money)),
    promotions: readAll('promotions', promotionSchema(money)),
    pages: readAll('pages', pageSchema()),
    pictures,
    words: words.map(({ language, origin }) => ({ language, entry: readEntry(language, origin, wordsTree) })),
    translations: translations.map(({ language, of, id, origin }) => ({
      language,
      of,
      entry: readEntry(id, origin, translationSchema(TEXTS[of])),
    })),
  };
  for (const one of allEntries(content)) faults.push(...one.faults);
  return { content, faults };
}

function allEntries(content: Content): readonly Entry<unknown>[] {
  const { shop, words, translations, root: _, pictures: _pictures, ...folders } = content;
  return [
    ...(shop === null ? [] : [shop]),
    ...[...words, ...translations].map(({ entry }) => entry),
    ...Object.values(folders).flat(),
  ];
}
