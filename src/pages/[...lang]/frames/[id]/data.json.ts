/** One frame as the engine needs it, for baskets and comparisons that hold it. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { bareFrame } from '../../../../catalogue/frame.ts';
import { spoken } from '../../../../components/shopWords.ts';

export const getStaticPaths = (() =>
  spoken.flatMap(({ lang, catalogue: { frames } }) =>
    frames.flatMap((frame) =>
      // A basket may know it by an id that it had before.
      [frame.id, ...frame.formerIds].map((id) => ({
        params: { lang, id },
        props: { frame: bareFrame(frame) },
      })),
    ),
  )) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) =>
  new Response(JSON.stringify(props['frame']), { headers: { 'content-type': 'application/json' } });
