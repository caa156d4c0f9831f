/** The text equivalent of a dimensioned drawing. */
import type { Frame, FrameSize } from '../catalogue/frame.ts';
import { t } from './shopWords.ts';

export interface DrawingText {
  readonly title: string;
  readonly description: string;
  /** What is written beside the temple. */
  readonly templeText: string;
  /** Unit of every figure of the drawing. */
  readonly unit: string;
}

/** Title, description and temple label of the drawing of one size. */
export function describeDrawing(frame: Frame, size: FrameSize): DrawingText {
  return {
    title: t('drawing.dimensioned', { model: frame.model, size: size.id }),
    description: t('drawing.describes', {
      a: size.aMm,
      b: size.bMm,
      dbl: size.dblMm,
      temple: size.templeMm,
      mounting: t(`mounting.${frame.mounting.kind}`),
      bridge: t(`bridge.${size.bridge}`),
    }),
    templeText: t('drawing.temple', { mm: size.templeMm }),
    unit: t('unit.mm'),
  };
}
