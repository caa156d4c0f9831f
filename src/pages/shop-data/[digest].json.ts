/** What worksheets need of the shop, once for all frames of a language. */
import type { APIRoute } from 'astro';
import { languageFilePaths } from '../../islands/dataFile.ts';
import { shopDataFile } from '../../islands/shopDataFile.ts';

export const getStaticPaths = () => languageFilePaths(shopDataFile);

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'application/json' } });
