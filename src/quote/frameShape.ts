/** The frame of a pair: one of the shop's, or one that the shopper already has. */

import type { Colourway, Frame, FrameSize, Hole } from '../catalogue/frame.ts';
import { sizeName } from '../catalogue/sizeNames.ts';
import { mirror } from '../optics/outline.ts';
import type { Outline } from '../optics/types.ts';
import type { FrameShape } from './lensJob.ts';
import type { OwnMeasures } from './ownMeasures.ts';

/** A frame of the shop in one size and colourway. */
export interface ShopFrame {
  readonly frame: Frame;
  readonly size: FrameSize;
  readonly colourway: Colourway;
}

/** Millimetres and outlines of a frame of the shop. */
export function shopFrameShape({ frame, size, colourway }: ShopFrame): FrameShape {
  const mounting = frame.mounting;
  return {
    ...bothSides(size.outline.radiiMm),
    holes: mounting.kind === 'drilled' ? mounting.holes.map((hole) => holePlace(hole, size.aMm)) : [],
    situation: {
      id: frame.id,
      size: size.id,
      sizeName: sizeName(size),
      colourway: colourway.code,
      colourwayName: colourway.name,
      stock: colourway.stock,
      notOffered: frame.notOffered,
      aMm: size.aMm,
      bMm: size.bMm,
      dblMm: size.dblMm,
      mounting: mounting.kind,
      outlineOrigin: size.outline.origin,
      rimDepthMm: frame.rimDepthMm,
      faceFormDeg: frame.faceFormDeg,
      frameCurveD: frame.frameCurveD,
      massG: frame.massG,
    },
  };
}

/** Millimetres of the shopper's own frame; `radiiMm` of its right lens, and whether they were measured. */
export function ownFrameShape(own: OwnMeasures): FrameShape {
  const { radiiMm, ...rest } = own;
  return {
    ...bothSides(radiiMm),
    holes: [],
    situation: {
      ...rest,
      id: null,
      size: null,
      sizeName: null,
      colourway: null,
      colourwayName: '',
      stock: 'in-stock',
      notOffered: [],
      rimDepthMm: 0,
      frameCurveD: null,
      massG: 0,
    },
  };
}

const kept = new WeakMap<readonly number[], { readonly right: Outline; readonly left: Outline }>();

/** Both outlines, kept with the radii: what the optics keep by outline is then found again for each package. */
function bothSides(radiiMm: readonly number[]) {
  let sides = kept.get(radiiMm);
  if (sides === undefined) {
    const right = { radiiMm };
    sides = { right, left: mirror(right) };
    kept.set(radiiMm, sides);
  }
  return sides;
}

function holePlace(hole: Hole, aMm: number) {
  const side = hole.side === 'nasal' ? 1 : -1;
  return {
    xMm: side * (aMm / 2 - hole.insetMm),
    yMm: hole.aboveCentreMm,
    diameterMm: hole.diameterMm,
  };
}
