/** The size to draw on a worksheet: the chosen one of a frame, or the shopper's own as measured so far. */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import type { FrameSize } from '../../catalogue/frame.ts';
import { ownSize } from '../../configurator/entry/ownSize.ts';
import { useSheet } from '../sheet.ts';

/** Null while an own frame is not known. */
export function useSize(): FrameSize | null {
  const { read, frame } = useSheet();
  const { request, waits, choices } = useStore(read);
  const [pair] = request.pairs;
  const own = pair !== undefined && typeof pair.frame === 'object' ? pair.frame : null;
  // Fitting an outline is slow beside a key that changes nothing of it.
  return useMemo(() => {
    if (pair === undefined || waits) return null;
    if (own !== null) return ownSize(own, pair.lenses);
    return frame.sizes.find(({ id }) => id === choices.size) ?? null;
  }, [JSON.stringify(own), waits, choices.size]);
}
