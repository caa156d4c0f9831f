/** The frames that a worksheet's advice may lead to, loaded when advice is wanted. */
import type { APIRoute } from 'astro';
import { frameFiles } from '../../islands/frameFiles.ts';

export const getStaticPaths = () =>
  frameFiles.map(({ digest, text }) => ({ params: { digest }, props: { text } }));

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'application/json' } });
