/** Pictures for links to the shop: one of its frames together, one of each. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import type { APIRoute, GetStaticPaths } from 'astro';
import type { Frame } from '../../catalogue/frame.ts';
import { firstRow } from '../../components/firstRow.ts';
import { lensColour, shownFirst } from '../../components/frameFacts.ts';
import { framePicture, sharesPictures, shopPicture } from '../../publishing/addresses.ts';
import { pngOf } from '../../publishing/keepPicture.ts';
import { frameShareSvg, shopShareSvg } from '../../publishing/sharePicture.ts';

const nameOf = (path: string) => path.replace(/^\/share\/(.+)\.png$/, '$1');
const shown = (frame: Frame) => ({
  frame,
  ...shownFirst(frame),
  lensColour: lensColour(frame, catalogue.tints),
});

export const getStaticPaths = (() => {
  if (!sharesPictures) return [];
  const { frames } = catalogue;
  return [
    { params: { name: nameOf(shopPicture) }, props: { frames: firstRow(catalogue) } },
    ...frames.map((frame) => ({ params: { name: nameOf(framePicture(frame)) }, props: { frames: [frame] } })),
  ];
}) satisfies GetStaticPaths;

export const GET: APIRoute = async ({ props, params }) => {
  const frames = props['frames'] as readonly Frame[];
  const all = frames.map(shown);
  const [first] = all;
  const single = params['name'] !== nameOf(shopPicture) && first !== undefined;
  const png = await pngOf(single ? frameShareSvg(first) : shopShareSvg(all));
  return new Response(png, { headers: { 'content-type': 'image/png' } });
};
