/** How complete a frame is, and what its owner still has to do. */
import type { Frame } from '../../catalogue/frame.ts';

export interface Completeness {
  /** Ids of sizes whose outline is an estimate. */
  readonly estimated: readonly string[];
  /** Whether anything in the box is named, whether there is a story, whether a colourway can be had. */
  readonly box: boolean;
  readonly story: boolean;
  readonly stock: boolean;
}

export function completenessOf({ sizes, inTheBox, story, colourways }: Frame): Completeness {
  return {
    estimated: sizes.filter(({ outline }) => outline.origin === 'fitted').map(({ id }) => id),
    box: inTheBox.length > 0,
    story: story.trim() !== '',
    stock: colourways.some(({ stock }) => stock !== 'sold-out'),
  };
}
