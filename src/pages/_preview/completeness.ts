/** How complete a frame is, and what its owner still has to do. */
import type { FrameSize, ListedFrame } from '../../catalogue/frame.ts';
import { BOX_AS_BEGUN, HOLES_AS_BEGUN, MASS_AS_BEGUN_G, rimAsBegun } from '../../catalogue/frameAsBegun.ts';
import type { OutlineFamily } from '../../optics/outlineFamily.ts';
import { usualEdMm } from '../../quote/ownFrame.ts';

/** A part that is as `npm run new` began it: most likely nobody has measured it yet. */
export type Unmeasured = 'rim' | 'holes' | 'mass' | 'ed' | 'contents';

export interface Completeness {
  /** Ids of sizes whose outline is an estimate. */
  readonly estimated: readonly string[];
  /** Whether there is a photograph; the scale drawing stands in for it. */
  readonly picture: boolean;
  /** Whether anything in the box is named, whether there is a story, whether a colourway can be had. */
  readonly box: boolean;
  readonly unmeasured: readonly Unmeasured[];
  readonly story: boolean;
  readonly stock: boolean;
}

export function completenessOf(frame: ListedFrame): Completeness {
  const { sizes, inTheBox, story, colourways, pictures } = frame;
  return {
    unmeasured: unmeasuredOf(frame),
    estimated: sizes.filter(({ outline }) => outline.origin === 'fitted').map(({ id }) => id),
    picture: pictures.length > 0,
    box: inTheBox.length > 0,
    story: story.trim() !== '',
    stock: colourways.some(({ stock }) => stock !== 'sold-out'),
  };
}

function unmeasuredOf(frame: ListedFrame): Unmeasured[] {
  const { mounting, massG, inTheBox, sizes } = frame;
  const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
  // One figure may well be what was measured; all four together hardly are.
  const { rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD } = frame;
  const isAsBegun: Readonly<Record<Unmeasured, boolean>> = {
    rim: same({ rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD }, rimAsBegun(mounting.kind)),
    holes: mounting.kind === 'drilled' && same(mounting.holes, HOLES_AS_BEGUN),
    mass: massG === MASS_AS_BEGUN_G,
    ed: sizes.some(hasUsualEd),
    contents: same(inTheBox, BOX_AS_BEGUN),
  };
  return (Object.keys(isAsBegun) as Unmeasured[]).filter((part) => isAsBegun[part]);
}

/** Whether the ED is the one that is suggested for its box. */
function hasUsualEd({ aMm, bMm, edMm, outline }: FrameSize): boolean {
  if (outline.family === null) return false;
  return Math.abs(usualEdMm(outline.family as OutlineFamily, { a: aMm, b: bMm }) - edMm) < 0.05 + 1e-9;
}
