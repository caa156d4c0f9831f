/** Words of basket, comparison and links, for the pages of frames. */
import type { APIRoute } from 'astro';
import { keepingWordsDigest, keepingWordsText } from '../../islands/keeping/keepingWordsFile.ts';

export const getStaticPaths = () => [{ params: { digest: keepingWordsDigest } }];

export const GET: APIRoute = () =>
  new Response(keepingWordsText, { headers: { 'content-type': 'application/json' } });
