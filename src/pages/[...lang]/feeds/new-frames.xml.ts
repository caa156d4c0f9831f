/** The feed of new frames, in each language. */
import type { APIRoute } from 'astro';
import { builtOn, languagePaths, shopWords } from '../../../components/shopWords.ts';
import { absolute } from '../../../publishing/addresses.ts';
import { newFrames } from '../../../publishing/news.ts';
import { rss } from '../../../publishing/rss.ts';

const MOST = 50;

export const getStaticPaths = languagePaths;

export const GET: APIRoute = ({ params, url }) => {
  const { catalogue, href, t } = shopWords(params);
  const { shop, frames } = catalogue;
  const channel = {
    title: t('feed.new.title', { shop: shop.name }),
    description: t('feed.new.description', { shop: shop.name }),
    language: shop.language,
    link: absolute(href('/')),
    self: absolute(url.pathname),
  };
  const items = newFrames(frames, builtOn, MOST).map((frame) => ({
    title: frame.model,
    link: absolute(href(`/frames/${frame.id}/`)),
    description: frame.summary,
    day: frame.added ?? builtOn,
  }));
  return new Response(rss(channel, items), { headers: { 'content-type': 'application/rss+xml' } });
};
