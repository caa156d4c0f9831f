/** The shopper's own frame as a size to draw. */
import type { Frame, FrameSize } from '../../catalogue/frame.ts';
import { box } from '../../optics/outline.ts';
import { resolveOwnFrame } from '../../quote/ownFrame.ts';
import { pairFaults } from '../../quote/plausible.ts';
import type { OwnFrame, PairRequest } from '../../quote/request.ts';
import type { Entries } from '../fields.ts';
import { standIn } from './ownFrame.ts';

/** The size with its outline, mm; null where the measurements make none. Its temple is not known. */
export function ownSize(own: OwnFrame, lenses: PairRequest['lenses']): FrameSize | null {
  const implausible = pairFaults({ frame: own, prescription: null, lenses }, '');
  const shape = implausible.length > 0 ? null : resolveOwnFrame(own, '', []);
  if (shape === null) return null;
  const { aMm, bMm, dblMm, radiiMm, outlineOrigin } = shape;
  return {
    id: '',
    aMm,
    bMm,
    dblMm,
    edMm: Number(box({ radiiMm }).edMm.toFixed(2)),
    templeMm: 0,
    bridge: own.mounting === 'drilled' ? 'pads' : 'saddle',
    outline: { origin: outlineOrigin, family: own.family ?? null, radiiMm },
    priceDifferenceMinor: 0,
  };
}

/** What a drawing needs of the frame beside its size: the rim is drawn as one of thin sheet, since it is not known. */
export const drawnFrame = (entries: Entries): Frame => ({
  ...standIn(entries),
  rimDepthMm: 2.6,
  rimCoverMm: 0.5,
});
