/** Languages and translations that belong to nothing. What a translation lacks is no fault of the shop. */
import type { Check, Content } from '../content.ts';
import type { ContentFault } from '../fault.ts';
import { languageSegment } from '../languages.ts';
import { listNames, nearest } from '../nearest.ts';
import { faultAt } from '../reading/entry.ts';
import { faultOfFile } from '../reading/sourceText.ts';
import { translationPath } from '../translation/translateNouns.ts';

/** A language that the shop names twice, or that a prose page has the address of. */
function languageFaults({ shop, pages }: Content): ContentFault[] {
  if (shop === null || shop.value === null) return [];
  const { origin, value } = shop;
  const languages = [value.language, ...value.otherLanguages];
  return value.otherLanguages.flatMap((language, at) => {
    const path = ['otherLanguages', at];
    if (languages.indexOf(language) !== at + 1) {
      const detail = { expected: 'each language once', received: language, hint: 'Remove it.' };
      return [faultAt(origin, path, { code: 'duplicate-id', ...detail })];
    }
    const segment = languageSegment(language, languages);
    return pages
      .filter(({ id }) => id === segment)
      .map(({ origin: { source } }) =>
        faultOfFile(source.path, {
          code: 'taken-address',
          expected: `a file name other than ${segment}: the pages in ${language} are there`,
          received: `"${segment}.md"`,
          hint: 'Rename the file.',
        }),
      );
  });
}

function homeless(content: Content): ContentFault[] {
  const { root, shop, translations } = content;
  const languages = shop?.value?.otherLanguages;
  const told = new Set<string>();
  return translations.flatMap(({ language, of, entry }) => {
    const { path: file } = entry.origin.source;
    if (languages !== undefined && !languages.includes(language)) {
      // A whole folder is out of place: once is enough.
      if (told.has(language)) return [];
      told.add(language);
      const expected = languages.length === 0 ? 'no translations' : listNames(languages);
      const hint = `Add ${language} to otherLanguages in ${root}/shop.yaml, or remove the folder.`;
      return [faultOfFile(file, { code: 'unknown-language', expected, received: language, hint })];
    }
    const known = of === 'shop' ? ['shop'] : content[of].map(({ id }) => id);
    if (known.includes(entry.id)) return [];
    const meant = nearest(entry.id, known);
    const { own } = translationPath({ root, into: language }, of, entry.id);
    const hint = meant === null ? 'Remove it.' : `Did you mean ${meant}?`;
    return [
      faultOfFile(file, {
        code: 'nothing-to-translate',
        expected: `the file ${own}`,
        received: 'none',
        hint,
      }),
    ];
  });
}

/** Declared languages once each, and translations of what is there. */
export const checkTranslations: Check = (content) => [...languageFaults(content), ...homeless(content)];
