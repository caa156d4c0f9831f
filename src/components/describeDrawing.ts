/** The text equivalent of a dimensioned drawing. */

import type { Frame, FrameSize } from '../catalogue/frame.ts';
import { sizeName } from '../catalogue/sizeNames.ts';
import type { ShopWords } from './shopWords.ts';

export interface DrawingText {
  readonly title: string;
  readonly description: string;
  /** What is written beside the temple. */
  readonly templeText: string;
  /** Unit of every figure of the drawing. */
  readonly unit: string;
}

/** Title, description and temple label of the drawing of one size. */
export function describeDrawing({ t, figure }: ShopWords, frame: Frame, size: FrameSize): DrawingText {
  return {
    title: t('drawing.dimensioned', { model: frame.model, size: sizeName(size) }),
    description: t('drawing.describes', {
      a: figure(size.aMm),
      b: figure(size.bMm),
      dbl: figure(size.dblMm),
      temple: figure(size.templeMm),
      mounting: t(`mounting.${frame.mounting.kind}`),
      bridge: t(`bridge.${size.bridge}`),
    }),
    templeText: t('drawing.temple', { mm: figure(size.templeMm) }),
    unit: t('unit.mm'),
  };
}
