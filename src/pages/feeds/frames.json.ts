/** All frames as a JSON Feed. */
import type { APIRoute } from 'astro';
import { builtOn, shopWords } from '../../components/shopWords.ts';
import { absolute, framePicture } from '../../publishing/addresses.ts';
import { productFeed } from '../../publishing/productFeed.ts';

const { catalogue, t } = shopWords({});

export const GET: APIRoute = ({ url }) => {
  const text = productFeed(
    catalogue,
    builtOn,
    t('feed.products.description', { shop: catalogue.shop.name }),
    {
      self: absolute(url.pathname),
      home: absolute('/'),
      frame: ({ id }) => absolute(`/frames/${id}/`),
      image: (frame) => absolute(framePicture(frame)),
    },
  );
  return new Response(text, { headers: { 'content-type': 'application/feed+json' } });
};
