/** Addresses of what the shop publishes for other programs. */
import type { Frame } from '../catalogue/frame.ts';
import { type ShopWords, shopWords } from '../components/shopWords.ts';

const { shop } = shopWords({}).catalogue;

/** The whole address of a path of the site. */
export const absolute = (path: string): string => `${shop.address}${path}`;

/** Feeds that every page of a language names. */
export const feedsOf = ({ href, t }: ShopWords) => [
  {
    path: href('/feeds/new-frames.xml'),
    type: 'application/rss+xml',
    title: t('feed.new.title', { shop: shop.name }),
  },
  {
    path: href('/feeds/frames.json'),
    type: 'application/feed+json',
    title: t('feed.products.title', { shop: shop.name }),
  },
];

/** Whether pictures for links are made: they are what takes longest in the first build of a large shop. */
export const sharesPictures: boolean = process.env['BEVELBOOK_PICTURES'] !== 'none';

export const shopPicture = '/share/shop.png';

/** The picture for links to a frame's page. */
export const framePicture = ({ id }: Pick<Frame, 'id'>): string => `/share/frames/${id}.png`;
