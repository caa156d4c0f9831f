/** The list of pages for search engines, by the protocol of sitemaps.org (0.9). */
import { element } from './xml.ts';

export interface ListedPage {
  readonly path: string;
  /** Civil day of the last change; null: not told. */
  readonly changed: string | null;
}

/** The text of sitemap.xml. */
export function sitemap(pages: readonly ListedPage[], address: (path: string) => string): string {
  const urls = pages.map(({ path, changed }) => {
    const day = changed === null ? '' : element('lastmod', changed);
    return `<url>${element('loc', address(path))}${day}</url>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...urls,
    '</urlset>',
    '',
  ].join('\n');
}
