/** What lists and pages of frames say about one, from its nouns alone. */
import type { Colourway, Frame, FrameSize } from '../catalogue/frame.ts';
import type { Tint } from '../catalogue/tint.ts';

/** Lowest and highest price of the frame over what is made of it, minor units. */
export function priceSpan(frame: Frame): { readonly fromMinor: number; readonly toMinor: number } {
  const prices = frame.sizes.flatMap((size) =>
    frame.colourways
      .filter((colourway) => isOffered(frame, size, colourway))
      .map((colourway) => frame.priceMinor + size.priceDifferenceMinor + colourway.priceDifferenceMinor),
  );
  // A frame that is made in nothing still has its own price to show.
  const all = prices.length > 0 ? prices : [frame.priceMinor];
  return { fromMinor: Math.min(...all), toMinor: Math.max(...all) };
}

/** Whether the frame is made in this size and colourway. */
export function isOffered(frame: Frame, size: FrameSize, colourway: Colourway): boolean {
  return !frame.notOffered.some((n) => n.size === size.id && n.colourway === colourway.code);
}

/** The size and colourway that stand for the frame in lists: the first that is made and not sold out. */
export function shownFirst(frame: Frame): { readonly size: FrameSize; readonly colourway: Colourway } {
  const pairs = frame.sizes.flatMap((size) => frame.colourways.map((colourway) => ({ size, colourway })));
  const offered = pairs.filter((p) => isOffered(frame, p.size, p.colourway));
  const shown = offered.find((p) => p.colourway.stock !== 'sold-out') ?? offered[0] ?? pairs[0];
  if (shown === undefined) throw new Error(`The frame "${frame.id}" has no size or no colourway.`);
  return shown;
}

/** Bridges of a frame, each once, in the order of its sizes. */
export function bridges(frame: Frame): FrameSize['bridge'][] {
  return [...new Set(frame.sizes.map((size) => size.bridge))];
}

/** The colour that the lenses of a sun frame are drawn in: the first even or polarised tint; else none. */
export function lensColour(frame: Frame, tints: readonly Tint[]): string | undefined {
  if (!frame.sun) return undefined;
  const tint = tints.find((t) => t.kind === 'polarised') ?? tints.find((t) => t.kind === 'solid');
  return tint?.states[0]?.colour;
}
