/** How complete a frame is, and what its owner still has to do. */
import type { ListedFrame } from '../../catalogue/frame.ts';

export interface Completeness {
  /** Ids of sizes whose outline is an estimate. */
  readonly estimated: readonly string[];
  /** Whether there is a photograph; the scale drawing stands in for it. */
  readonly picture: boolean;
  /** Whether anything in the box is named, whether there is a story, whether a colourway can be had. */
  readonly box: boolean;
  readonly story: boolean;
  readonly stock: boolean;
}

export function completenessOf({ sizes, inTheBox, story, colourways, pictures }: ListedFrame): Completeness {
  return {
    estimated: sizes.filter(({ outline }) => outline.origin === 'fitted').map(({ id }) => id),
    picture: pictures.length > 0,
    box: inTheBox.length > 0,
    story: story.trim() !== '',
    stock: colourways.some(({ stock }) => stock !== 'sold-out'),
  };
}
