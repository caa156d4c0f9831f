/** What the list of frames is judged by, once for the whole list. */
import type { APIRoute } from 'astro';
import { languageFilePaths } from '../../islands/dataFile.ts';
import { frameDataFile } from '../../islands/list/frameDataFile.ts';

export const getStaticPaths = () => languageFilePaths(frameDataFile);

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'application/json' } });
