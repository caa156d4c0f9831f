/** Links in the Markdown of any file must lead to a page that the shop will have. */
import { type Check, type Content, sound } from '../content.ts';
import type { ContentFault, FaultDetail } from '../fault.ts';
import { languageSegment } from '../languages.ts';
import { nearest } from '../nearest.ts';
import { linksIn } from '../reading/markdown.ts';
import type { Origin } from '../reading/origin.ts';
import { faultIn } from '../reading/sourceText.ts';
import { valueAt } from '../schema/parse.ts';

/** Pages that every shop has. */
const OF_EVERY_SHOP = [
  '/',
  '/basket/',
  '/frames/',
  '/frames-by/mounting/',
  '/frames-by/price/',
  '/frames-by/width/',
  '/lenses/',
  '/measuring-rule/',
  '/order/',
  '/promotions/',
  '/reasons/',
  '/workroom/',
];

/** Addresses of the site, without a language before them. */
function addresses(content: Content): Set<string> {
  const raw = content.shop?.origin.raw;
  const collections = valueAt(raw, ['collections']);
  const named = Array.isArray(collections) ? collections.map((one) => String(valueAt(one, ['id']))) : [];
  const { frames, pages, designs, materials, tints, coatings } = content;
  const former = sound(frames).flatMap(({ value }) => value.formerIds);
  const lenses = Object.entries({ designs, materials, tints, coatings }).flatMap(([kind, options]) =>
    options.map(({ id }) => `/lenses/${kind}/${id}/`),
  );
  return new Set([
    ...OF_EVERY_SHOP,
    ...(valueAt(raw, ['ownFrame']) === true ? ['/your-frame/'] : []),
    ...named.map((id) => `/collections/${id}/`),
    ...[...frames.map(({ id }) => id), ...former].map((id) => `/frames/${id}/`),
    ...lenses,
    ...pages.map(({ id }) => `/${id}/`),
  ]);
}

/** What links are judged by. */
interface Site {
  readonly known: ReadonlySet<string>;
  /** First parts of the addresses of further languages. */
  readonly languages: readonly string[];
  /** Path of the shop's address, which the build puts before what is written as at the root; '' where there is none. */
  readonly base: string;
}

/** What is wrong with a link in a text that is shown at `at`; null where it leads to a page, a file or elsewhere. */
function linkFault(link: string, at: string, { known, languages, base }: Site): FaultDetail | null {
  if (link === '' || /^(?:[a-z][a-z0-9+.-]*:|\/\/|#|\?)/i.test(link)) return null;
  const { pathname } = new URL(link, `https://shop.invalid${at}`);
  // Files of the folder public are not read here.
  if (/\.[a-z0-9]+$/i.test(pathname) && !/\.(?:md|html?)$/i.test(pathname)) return null;
  const plainOf = (path: string) => {
    const language = languages.find((one) => path.startsWith(`/${one}/`));
    return language === undefined ? path : path.slice(language.length + 1);
  };
  if (known.has(plainOf(pathname))) return null;
  const moved = base !== '' && pathname.startsWith(`${base}/`);
  const plain = plainOf(moved ? pathname.slice(base.length) : pathname);
  const whole = plain.replace(/(?:\.md|\.html?)?\/?$/i, '/');
  const meant = known.has(whole) ? whole : nearest(whole, known);
  return {
    code: 'dead-link',
    expected: 'the address of a page of the site, such as /frames/',
    received: link,
    hint:
      meant === null
        ? 'Correct the address, or remove the link.'
        : moved
          ? `Write ${meant}: the build puts ${base} before it.`
          : `Did you mean ${meant}?`,
  };
}

function faultsOf({ source, body }: Origin, judge: (link: string) => FaultDetail | null): ContentFault[] {
  const bodyAt = source.text.length - body.length;
  return linksIn(body).flatMap((link) => {
    const detail = judge(link);
    if (detail === null) return [];
    // Markdown may have written the address another way; then its text as a whole is meant.
    const at = Math.max(bodyAt, source.text.indexOf(link, bodyAt));
    return [faultIn(source, at, at + link.length, [], detail)];
  });
}

/** Where the text of a file is shown. */
function shownAt(kind: string, id: string): string {
  if (kind === 'pages') return `/${id}/`;
  if (kind === 'promotions') return '/promotions/';
  return kind === 'frames' ? `/frames/${id}/` : `/lenses/${kind}/${id}/`;
}

/** Links that lead nowhere. */
export const checkLinks: Check = (content) => {
  const own = String(valueAt(content.shop?.origin.raw, ['language']) ?? '');
  const all = [...new Set([own, ...content.words.map(({ language }) => language)])];
  const segments = new Map(all.map((language) => [language, languageSegment(language, all)]));
  const languages = [...segments.values()].filter((segment) => segment !== undefined);
  const address = String(valueAt(content.shop?.origin.raw, ['address']) ?? '');
  const base = /^https?:\/\/[^/]+(\/.*)?$/.exec(address)?.[1]?.replace(/\/$/, '') ?? '';
  const site: Site = { known: addresses(content), languages, base };
  const { frames, designs, materials, tints, coatings, promotions, pages } = content;
  const texts = Object.entries({ frames, designs, materials, tints, coatings, promotions, pages }).flatMap(
    ([kind, entries]) => entries.map(({ id, origin }) => ({ at: shownAt(kind, id), origin })),
  );
  const translated = content.translations.map(({ language, of, entry }) => ({
    at: `/${segments.get(language) ?? language}${shownAt(of, entry.id)}`,
    origin: entry.origin,
  }));
  return [...texts, ...translated].flatMap(({ at, origin }) =>
    faultsOf(origin, (link) => linkFault(link, at, site)),
  );
};
