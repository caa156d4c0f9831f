/** Where a held pair is opened: on the page of its frame, or on that of frames that shoppers own. */
import { pageHref } from '../../catalogue/languages.ts';
import type { Shop } from '../../catalogue/shop.ts';
import { isOwn } from '../entry/ownFrame.ts';

/** The path of a frame's page in the language that is spoken, such as `/frames/dunlin/`. */
export const pagePath = (shop: Pick<Shop, 'path'>, frame: string): string =>
  pageHref(shop, isOwn({ id: frame }) ? `/${frame}/` : `/frames/${frame}/`);
