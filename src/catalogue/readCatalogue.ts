/**
 * The one reader of the shop: files in, the whole catalogue or every fault out. It knows neither disk nor clock;
 * load.ts gives it the files.
 */

import { currencyDigits } from '../money/currency.ts';
import type { Catalogue } from './catalogue.ts';
import { checkDuplicates } from './checks/duplicates.ts';
import { checkFiles } from './checks/files.ts';
import { checkFormerIds } from './checks/formerIds.ts';
import { checkFrames } from './checks/frames.ts';
import { checkLenses } from './checks/lenses.ts';
import { checkLinks } from './checks/links.ts';
import { checkPictures } from './checks/pictures.ts';
import { checkPrices } from './checks/prices.ts';
import { checkPromotions } from './checks/promotions.ts';
import { checkReferences, outdatedNames } from './checks/references.ts';
import { checkShop } from './checks/shop.ts';
import { checkTexts } from './checks/texts.ts';
import { checkTranslations } from './checks/translations.ts';
import { checkUsable } from './checks/usable.ts';
import { checkWords } from './checks/words.ts';
import { checkWorkroom } from './checks/workroom.ts';
import { sound } from './content.ts';
import { compareFaults } from './fault.ts';
import { gatherContent } from './gatherContent.ts';
import { renderMarkdown } from './reading/markdown.ts';
import type { SourceFile } from './reading/sourceText.ts';
import { resolveFrames, resolveOptions, resolvePromotions } from './resolve/nouns.ts';
import { makeOutlines } from './resolve/outlines.ts';
import { flattenWords } from './schema/words.ts';
import type { Reading } from './shopReading.ts';
import { framesWithSizeNames } from './sizeNames.ts';
import { translateCatalogue } from './translation/translateCatalogue.ts';

/** The content as a whole, one concern a check. */
const CHECKS = [
  checkFiles,
  checkShop,
  checkWorkroom,
  checkPrices,
  checkReferences,
  checkDuplicates,
  checkFrames,
  checkFormerIds,
  checkPictures,
  checkLenses,
  checkPromotions,
  checkWords,
  checkTexts,
  checkLinks,
  checkTranslations,
  checkUsable,
] as const;

/** Reads the files of a content folder; `root` is that folder as the files' paths begin, such as `content`. */
export function readCatalogue(files: readonly SourceFile[], root = 'content'): Reading {
  const { content, faults: readFaults } = gatherContent(files, root);
  const outlines = makeOutlines(content);
  const faults = [...readFaults, ...CHECKS.flatMap((check) => check(content)), ...outlines.faults];
  const shop = content.shop?.value;
  if (faults.length > 0 || !shop) return { ok: false, faults: faults.toSorted(compareFaults) };
  const { collections, workroom, prices, otherLanguages, ...rest } = shop;
  const words = content.words.filter(({ language }) => language === shop.language);
  const catalogue: Catalogue = {
    shop: {
      ...rest,
      languages: [shop.language, ...otherLanguages],
      path: '',
      currencyDigits: currencyDigits(shop.currency) ?? 2,
    },
    collections,
    workroom,
    priceHabits: prices,
    frames: resolveFrames(content, outlines.byFrame),
    ...resolveOptions(content),
    promotions: resolvePromotions(content),
    words: Object.assign({}, ...words.map(({ entry }) => flattenWords(entry.value ?? {}))),
    pages: sound(content.pages).map(({ id, origin, value }) => ({
      slug: id,
      ...value,
      html: renderMarkdown(origin.body),
    })),
  };
  const named = (one: Catalogue): Catalogue => ({ ...one, frames: framesWithSizeNames(one) });
  const others = otherLanguages.map((language) => translateCatalogue(catalogue, content, language));
  return {
    ok: true,
    catalogue: named(catalogue),
    translations: others.map((one) => named(one.catalogue)),
    untranslated: others.map((one) => one.untranslated),
    notes: outdatedNames(content),
  };
}
