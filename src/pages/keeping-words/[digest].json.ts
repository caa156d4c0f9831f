/** Words of basket, comparison and links, for the pages of frames. */
import type { APIRoute } from 'astro';
import { languageFilePaths } from '../../islands/dataFile.ts';
import { keepingWordsFile } from '../../islands/keeping/keepingWordsFile.ts';

export const getStaticPaths = () => languageFilePaths(keepingWordsFile);

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'application/json' } });
