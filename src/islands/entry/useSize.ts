/** The size to draw on a worksheet: the chosen one of a frame, or the shopper's own as measured so far. */
import { useEffect, useState } from 'preact/hooks';
import type { FrameSize } from '../../catalogue/frame.ts';
import { ownSize } from '../../configurator/entry/ownSize.ts';
import type { PairRequest } from '../../quote/request.ts';
import { useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';

/** Fitting an outline takes longer than a key may: it waits for a pause, ms. */
const PAUSE_MS = 120;

/** The last one that was fitted: the drawings of a page share it. */
let fitted: { readonly text: string; readonly size: FrameSize | null } | null = null;

function fittedSize(text: string, { frame, lenses }: PairRequest): FrameSize | null {
  if (fitted?.text !== text)
    fitted = { text, size: typeof frame === 'object' ? ownSize(frame, lenses) : null };
  return fitted.size;
}

/** Null while an own frame is not known. */
export function useSize(): FrameSize | null {
  const { read, frame } = useSheet();
  const { request, waits, choices } = useStore(read);
  const [pair] = request.pairs;
  const own = pair !== undefined && typeof pair.frame === 'object' ? JSON.stringify(pair.frame) : null;
  const [size, setSize] = useState<FrameSize | null>(null);
  useEffect(() => {
    if (own === null || waits || pair === undefined) return undefined;
    const timer = setTimeout(() => setSize(fittedSize(own, pair)), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [own, waits]);
  if (own !== null) return waits ? null : size;
  return frame.sizes.find(({ id }) => id === choices.size) ?? null;
}
