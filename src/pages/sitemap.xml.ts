/** For search engines: every page that they should know. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import type { APIRoute } from 'astro';
import { absolute } from '../publishing/addresses.ts';
import { listedPages } from '../publishing/listedPages.ts';
import { sitemap } from '../publishing/sitemap.ts';

export const GET: APIRoute = () =>
  new Response(sitemap(listedPages(catalogue), absolute), { headers: { 'content-type': 'application/xml' } });
