/** The shop in another of its languages: the same ids, figures and prices in other words. */
import type { Catalogue } from '../catalogue.ts';
import type { Content } from '../content.ts';
import type { ContentFault } from '../fault.ts';
import { languageSegment } from '../languages.ts';
import { type Speech, translateNouns } from './translateNouns.ts';
import { translateWords } from './translateWords.ts';
import type { Untranslated } from './untranslated.ts';

/** The catalogue in the language `into`. */
export function translateCatalogue(
  own: Catalogue,
  { root, words: files, translations }: Content,
  into: string,
): { readonly catalogue: Catalogue; readonly untranslated: Untranslated } {
  const from = own.shop.language;
  const texts: ContentFault[] = [];
  const mine = translations.filter(({ language }) => language === into);
  const segment = languageSegment(into, own.shop.languages) ?? '';
  const speech: Speech = { root, from, into, segment, translations: mine, faults: texts };
  const { words, faults, missingWords } = translateWords(files, from, into);
  const byId = ({ id }: { readonly id: string }) => id;
  const { shop: ownShop, collections: ownCollections, workroom: ownWorkroom } = own;
  const whole = { ...ownShop, collections: ownCollections, workroom: ownWorkroom };
  const told = translateNouns(speech, 'shop', [whole], () => 'shop', null)[0] ?? whole;
  const { collections, workroom, ...shop } = told;
  return {
    catalogue: {
      ...own,
      shop: { ...shop, language: into, path: `/${segment}` },
      collections,
      workroom,
      words,
      frames: translateNouns(speech, 'frames', own.frames, byId, 'story'),
      designs: translateNouns(speech, 'designs', own.designs, byId, 'story'),
      materials: translateNouns(speech, 'materials', own.materials, byId, 'story'),
      tints: translateNouns(speech, 'tints', own.tints, byId, 'story'),
      coatings: translateNouns(speech, 'coatings', own.coatings, byId, 'story'),
      promotions: translateNouns(speech, 'promotions', own.promotions, byId, 'story'),
      pages: translateNouns(speech, 'pages', own.pages, ({ slug }) => slug, 'html'),
    },
    untranslated: { missingWords, words: faults, texts },
  };
}
