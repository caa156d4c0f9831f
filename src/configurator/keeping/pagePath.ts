/** Where a held pair is opened: on the page of its frame, or on that of frames that shoppers own. */
import { pageHref, type Spoken } from '../../catalogue/languages.ts';
import { isOwn } from '../entry/ownFrame.ts';

/** The path of a frame's page in the language that is spoken, such as `/frames/dunlin/`. */
export const pagePath = (shop: Spoken, frame: string): string =>
  pageHref(shop, isOwn({ id: frame }) ? `/${frame}/` : `/frames/${frame}/`);
