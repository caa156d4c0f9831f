/** One frame as the engine needs it, for baskets and comparisons that hold it. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import type { APIRoute, GetStaticPaths } from 'astro';
import { bareFrame } from '../../../catalogue/frame.ts';

export const getStaticPaths = (() =>
  catalogue.frames.map((frame) => ({
    params: { id: frame.id },
    props: { frame: bareFrame(frame) },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) =>
  new Response(JSON.stringify(props['frame']), { headers: { 'content-type': 'application/json' } });
