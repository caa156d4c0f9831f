/** The feed of new frames. */
import type { APIRoute } from 'astro';
import { builtOn, shopWords } from '../../components/shopWords.ts';
import { absolute } from '../../publishing/addresses.ts';
import { newFrames } from '../../publishing/news.ts';
import { rss } from '../../publishing/rss.ts';

const MOST = 50;
const { catalogue, t } = shopWords({});

export const GET: APIRoute = ({ url }) => {
  const { shop, frames } = catalogue;
  const channel = {
    title: t('feed.new.title', { shop: shop.name }),
    description: t('feed.new.description', { shop: shop.name }),
    language: shop.language,
    link: absolute('/'),
    self: absolute(url.pathname),
  };
  const items = newFrames(frames, builtOn, MOST).map((frame) => ({
    title: frame.model,
    link: absolute(`/frames/${frame.id}/`),
    description: frame.summary,
    day: frame.added ?? builtOn,
  }));
  return new Response(rss(channel, items), { headers: { 'content-type': 'application/rss+xml' } });
};
