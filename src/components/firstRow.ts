/** The frames that stand for the shop, at home and where its pages are shared. */
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { ListedFrame } from '../catalogue/frame.ts';

/** One frame of each collection in the shop's own order, then others, up to two full rows of three. */
export function firstRow({ frames, collections }: Catalogue): readonly ListedFrame[] {
  const firsts = collections.flatMap(({ id }) => frames.find(({ collection }) => collection === id) ?? []);
  return [...firsts, ...frames.filter((frame) => !firsts.includes(frame))].slice(0, 6);
}
