/** A frame from the front, to scale, with its text equivalent. Dimensioned drawings are in DimensionedFrame.astro. */
import type { Colourway, Frame, FrameSize } from '../../catalogue/frame.ts';
import type { Field } from '../drawing/field.ts';
import { type FrameShape, frameShape } from '../drawing/frameDrawing.ts';
import { frontSvg } from '../drawing/frontSvg.ts';
import { markup } from './markup.ts';

interface Drawn {
  readonly frame: Frame;
  readonly size: FrameSize;
  readonly colourway: Colourway;
  /** Start of every id in this drawing: once a page. */
  readonly uid: string;
  readonly title: string;
  /** What is shown, so that the drawings of a list have one scale. */
  readonly field: Field;
  readonly lensColour: string | undefined;
  /** Whether other pages show the same drawing: it is kept for them. */
  readonly again?: boolean;
}

const kept = new WeakMap<FrameShape, { readonly key: string; readonly svg: string }>();

function front(shape: FrameShape, { colourway, uid, lensColour, again = false }: Drawn): string {
  if (!again) return frontSvg(shape, colourway, uid, lensColour);
  const key = `${uid} ${colourway.code} ${lensColour}`;
  const known = kept.get(shape);
  if (known?.key === key) return known.svg;
  const svg = frontSvg(shape, colourway, uid, lensColour);
  kept.set(shape, { key, svg });
  return svg;
}

/** The `svg`. */
export function frameDrawing(drawn: Drawn): string {
  const { frame, size, uid, title, field } = drawn;
  const { spanMm, heightMm } = field;
  const view = `${-spanMm / 2} ${-heightMm / 2} ${spanMm} ${heightMm}`;
  return [
    `<svg class="frame-drawing" viewBox="${view}" width="${spanMm}mm" height="${heightMm}mm" role="img" aria-labelledby="${uid}-t">`,
    `<title id="${uid}-t">${markup(title)}</title>${front(frameShape(frame, size), drawn)}</svg>`,
  ].join('');
}
