/** Where a held pair is opened: on the page of its frame, or on that of frames that shoppers own. */
import { isOwn } from '../entry/ownFrame.ts';

/** The path of a frame's page, such as `/frames/dunlin/`. */
export const pagePath = (frame: string): string =>
  isOwn({ id: frame }) ? `/${frame}/` : `/frames/${frame}/`;
