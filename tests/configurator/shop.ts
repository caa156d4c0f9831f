/** The demonstration shop, read from its files, and a worksheet of one of its frames. */

import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import type { Frame } from '../../src/catalogue/frame.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';

const reading = loadCatalogue('content');
if (!reading.ok)
  throw new Error(`The demonstration shop has ${reading.faults.length} faults: run npm run check.`);

export const shop: Catalogue = reading.catalogue;

/** A day within the shop's November offer. */
export const DATE = '2026-11-25';

/** A frame of the shop by its id. */
export function frameOf(id: string): Frame {
  const frame = shop.frames.find((one) => one.id === id);
  if (frame === undefined) throw new Error(`The shop has no frame "${id}".`);
  return frame;
}
