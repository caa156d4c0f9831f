/** All frames as a JSON Feed, in each language. */
import type { APIRoute } from 'astro';
import { builtOn, languagePaths, shopWords } from '../../../components/shopWords.ts';
import { absolute, framePicture } from '../../../publishing/addresses.ts';
import { productFeed } from '../../../publishing/productFeed.ts';

export const getStaticPaths = languagePaths;

export const GET: APIRoute = ({ params, url }) => {
  const { catalogue, href, t } = shopWords(params);
  const text = productFeed(
    catalogue,
    builtOn,
    t('feed.products.description', { shop: catalogue.shop.name }),
    {
      self: absolute(url.pathname),
      home: absolute(href('/')),
      frame: ({ id }) => absolute(href(`/frames/${id}/`)),
      image: (frame) => absolute(framePicture(frame)),
    },
  );
  return new Response(text, { headers: { 'content-type': 'application/feed+json' } });
};
