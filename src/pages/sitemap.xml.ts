/** For search engines: every page that they should know. */
import type { APIRoute } from 'astro';
import { spoken } from '../components/shopWords.ts';
import { absolute } from '../publishing/addresses.ts';
import { listedPages } from '../publishing/listedPages.ts';
import { sitemap } from '../publishing/sitemap.ts';

const pages = spoken.flatMap(({ catalogue, href }) =>
  listedPages(catalogue).map(({ path, changed }) => ({ path: href(path), changed })),
);

export const GET: APIRoute = () =>
  new Response(sitemap(pages, absolute), { headers: { 'content-type': 'application/xml' } });
