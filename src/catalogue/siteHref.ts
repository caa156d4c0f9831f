/**
 * Where the site lies below its host, such as `/shop`. Put in by the build for scripts in the browser alone: pages are
 * made as if at the root, and the build adds it to their addresses afterwards.
 */
declare const BEVELBOOK_BASE: string | undefined;

/** An address of the site, such as `/basket/`, as whoever runs this has to write it. */
export const siteHref = (path: string): string =>
  typeof BEVELBOOK_BASE === 'string' ? `${BEVELBOOK_BASE}${path}` : path;
