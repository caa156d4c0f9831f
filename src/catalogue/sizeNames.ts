/** What sizes are called where their ids say more than `51-19`: two of the same figures, told apart by their bridge. */
import type { Catalogue } from './catalogue.ts';
import type { Frame, FrameSize } from './frame.ts';

type Named = Pick<Catalogue, 'frames' | 'words' | 'shop'>;

/** The frames with a name for every size such as `49-20-saddle`: `49-20 saddle`, in the words of the catalogue. */
export function framesWithSizeNames({ frames, words, shop }: Named): Catalogue['frames'] {
  const nameOf = ({ id, bridge }: FrameSize): string | null => {
    const [, figures, apart] = /^(\d+-\d+)-(.+)$/.exec(id) ?? [];
    if (figures === undefined || apart === undefined) return null;
    const word = apart === bridge ? words[`page.bridge.${bridge}`]?.toLocaleLowerCase(shop.language) : null;
    return `${figures} ${word ?? apart.replaceAll('-', ' ')}`;
  };
  return frames.map((frame) => {
    if (frame.sizes.every((size) => nameOf(size) === null)) return frame;
    const sizes = frame.sizes.map((size) => {
      const name = nameOf(size);
      return name === null ? size : { ...size, name };
    });
    return { ...frame, sizes };
  });
}

/** What shoppers read for a size. */
export const sizeName = ({ id, name }: Pick<FrameSize, 'id' | 'name'>): string => name ?? id;

/** The same by its id; the id where the frame has no such size. */
export function sizeNameOf({ sizes }: Pick<Frame, 'sizes'>, id: string): string {
  const size = sizes.find((one) => one.id === id);
  return size === undefined ? id : sizeName(size);
}
