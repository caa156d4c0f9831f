/** Every check of the content as a whole. */
import type { Content } from '../content.ts';
import type { ContentFault } from '../fault.ts';
import { checkDuplicates } from './duplicates.ts';
import { checkFiles } from './files.ts';
import { checkFrames } from './frames.ts';
import { checkLenses } from './lenses.ts';
import { checkPromotions } from './promotions.ts';
import { checkReferences } from './references.ts';
import { checkShop } from './shop.ts';
import { checkUsable } from './usable.ts';
import { checkWords } from './words.ts';

const CHECKS = [
  checkFiles,
  checkShop,
  checkReferences,
  checkDuplicates,
  checkFrames,
  checkLenses,
  checkPromotions,
  checkWords,
  checkUsable,
] as const;

/** What all checks find, unsorted. */
export function checkContent(content: Content): ContentFault[] {
  return CHECKS.flatMap((check) => check(content));
}
