/** What the list of frames is judged by, once for the whole list. */
import type { APIRoute } from 'astro';
import { frameDataDigest, frameDataText } from '../../islands/list/frameDataFile.ts';

export const getStaticPaths = () => [{ params: { digest: frameDataDigest } }];

export const GET: APIRoute = () =>
  new Response(frameDataText, { headers: { 'content-type': 'application/json' } });
