/** The frames that a worksheet's advice may lead to, loaded when advice is wanted. */
import type { APIRoute } from 'astro';
import { filePaths } from '../../islands/dataFile.ts';
import { frameFiles } from '../../islands/frameFiles.ts';

export const getStaticPaths = () => filePaths(frameFiles);

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'application/json' } });
