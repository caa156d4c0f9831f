/** For search engines: all may be read, and where the list of pages is. */
import type { APIRoute } from 'astro';
import { absolute } from '../publishing/addresses.ts';

export const GET: APIRoute = () =>
  new Response(`User-agent: *\nAllow: /\n\nSitemap: ${absolute('/sitemap.xml')}\n`, {
    headers: { 'content-type': 'text/plain' },
  });
