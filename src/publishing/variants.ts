/** What can be bought of a frame: each size in each colourway that is made, with its price on a day. */
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Colourway, FrameSize, ListedFrame, Stock } from '../catalogue/frame.ts';
import { isOffered } from '../components/frameFacts.ts';
import { type FramePrice, framePrice } from '../pricing/framePrice.ts';

export interface Variant extends FramePrice {
  /** Made of frame, size and colourway, all of which the owner keeps. */
  readonly sku: string;
  readonly size: FrameSize;
  readonly colourway: Colourway;
}

/** Every variant of a frame on a civil date, sizes first. */
export function variantsOf(catalogue: Catalogue, frame: ListedFrame, date: string): readonly Variant[] {
  return frame.sizes.flatMap((size) =>
    frame.colourways
      .filter((colourway) => isOffered(frame, size, colourway))
      .map((colourway) => ({
        ...framePrice(catalogue, { frame, size, colourway }, date),
        sku: `${frame.id}-${size.id}-${colourway.code}`,
        size,
        colourway,
      })),
  );
}

/** Members of schema.org's ItemAvailability. */
export const AVAILABILITY = {
  'in-stock': 'InStock',
  'made-to-order': 'MadeToOrder',
  'sold-out': 'SoldOut',
} as const satisfies Record<Stock, string>;
