/**
 * Frames as a list sends them to the browser: what judging needs, without stories and pictures. An outline goes as 72
 * radii in steps of 0.01 mm, each as its difference from the one before, and comes back as 180 by a smooth curve
 * through them. Against the 360 radii of the shop the thickest edge of a lens up to 10 D then differs by less than
 * 0.05 mm; the frame's own page computes from all of them.
 */
import type { Colourway, Frame, FrameSize } from '../catalogue/frame.ts';
import { resample } from '../optics/outlineShape.ts';

/** Radii of an outline as sent, and as computed with. */
const SENT = 72;
const USED = 180;
const STEPS_PER_MM = 100;

type SentSize = Pick<FrameSize, 'id' | 'name' | 'aMm' | 'bMm' | 'dblMm' | 'edMm' | 'priceDifferenceMinor'> & {
  readonly origin: FrameSize['outline']['origin'];
  /** Radii in 0.01 mm: the first, then each less the one before. */
  readonly steps: readonly number[];
};

type SentColourway = Pick<Colourway, 'code' | 'name' | 'priceDifferenceMinor' | 'stock'> & {
  /** Of the front, sRGB. */
  readonly colour: string;
};

type Kept =
  | 'id'
  | 'collection'
  | 'priceMinor'
  | 'wearer'
  | 'sun'
  | 'mounting'
  | 'rimDepthMm'
  | 'rimCoverMm'
  | 'faceFormDeg'
  | 'frameCurveD'
  | 'massG'
  | 'notOffered';

/** A frame as sent. */
export type SentFrame = Pick<Frame, Kept> & {
  readonly sizes: readonly SentSize[];
  readonly colourways: readonly SentColourway[];
};

/** The frame without what lists leave out. */
export function sendFrame(frame: Frame): SentFrame {
  const { id, collection, priceMinor, wearer, sun, mounting, notOffered } = frame;
  const { rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD, massG } = frame;
  return {
    ...{ id, collection, priceMinor, wearer, sun, mounting, notOffered },
    ...{ rimDepthMm, rimCoverMm, faceFormDeg, frameCurveD, massG },
    sizes: frame.sizes.map(({ id, name, aMm, bMm, dblMm, edMm, priceDifferenceMinor, outline }) => ({
      ...(name === undefined ? {} : { name }),
      ...{ id, aMm, bMm, dblMm, edMm, priceDifferenceMinor },
      origin: outline.origin,
      steps: toSteps(outline.radiiMm),
    })),
    colourways: frame.colourways.map(({ code, name, priceDifferenceMinor, stock, front }) => ({
      ...{ code, name, priceDifferenceMinor, stock },
      colour: front.colour,
    })),
  };
}

/** A frame to judge from what was sent; texts that lists leave out are empty. */
export function receiveFrame(sent: SentFrame): Frame {
  return {
    ...sent,
    model: '',
    summary: '',
    story: '',
    material: '',
    comesFitted: '',
    inTheBox: [],
    sizes: sent.sizes.map(({ origin, steps, ...size }) => ({
      ...size,
      templeMm: 0,
      bridge: 'saddle',
      outline: { origin, family: null, radiiMm: fromSteps(steps) },
    })),
    colourways: sent.colourways.map(({ colour, ...colourway }) => {
      const part = { colour, second: null, finish: 'solid' } as const;
      return { ...colourway, front: part, bridge: part, temples: part };
    }),
  };
}

function toSteps(radiiMm: readonly number[]): readonly number[] {
  const radii = resample({ radiiMm }, SENT).radiiMm.map((mm) => Math.round(mm * STEPS_PER_MM));
  return radii.map((radius, i) => radius - (i === 0 ? 0 : (radii[i - 1] as number)));
}

function fromSteps(steps: readonly number[]): readonly number[] {
  let sum = 0;
  const radiiMm = steps.map((step) => {
    sum += step;
    return sum / STEPS_PER_MM;
  });
  return resample({ radiiMm }, USED).radiiMm;
}
