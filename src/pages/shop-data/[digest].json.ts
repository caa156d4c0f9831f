/** What worksheets need of the shop, once for all frames. */
import type { APIRoute } from 'astro';
import { shopDataDigest, shopDataText } from '../../islands/shopDataFile.ts';

export const getStaticPaths = () => [{ params: { digest: shopDataDigest } }];

export const GET: APIRoute = () =>
  new Response(shopDataText, { headers: { 'content-type': 'application/json' } });
