/** Names in a request become the shop's nouns, or faults that list what the shop has. */

import type { Offer } from '../catalogue/catalogue.ts';
import type { Fault } from './fault.ts';
import { ownFrameShape, type ShopFrame, shopFrameShape } from './frameShape.ts';
import type { FrameShape } from './lensJob.ts';
import { resolveOwnFrame } from './ownFrame.ts';
import type { LensesRequest, PairRequest } from './request.ts';
import type { ResolvedLenses } from './resolvedLenses.ts';

export interface ResolvedPair {
  readonly request: PairRequest;
  /** null: the shopper's own frame. */
  readonly shopFrame: ShopFrame | null;
  readonly frame: FrameShape;
  readonly lenses: ResolvedLenses;
}

/** The pair by its nouns; faults are added to `faults`, and null is returned where there were any. */
export function resolvePair(
  offer: Offer,
  request: PairRequest,
  path: string,
  faults: Fault[],
): ResolvedPair | null {
  const lenses = resolveLenses(offer, request.lenses, `${path}.lenses`, faults);
  if (typeof request.frame === 'object') {
    const own = resolveOwnFrame(request.frame, `${path}.frame`, faults);
    return own && lenses && { request, shopFrame: null, frame: ownFrameShape(own), lenses };
  }
  const shopFrame = resolveShopFrame(offer, request, path, faults);
  return shopFrame && lenses && { request, shopFrame, frame: shopFrameShape(shopFrame), lenses };
}

function resolveShopFrame(
  offer: Offer,
  request: PairRequest,
  path: string,
  faults: Fault[],
): ShopFrame | null {
  const frame = find(offer.frames, ({ id }) => id, request.frame as string, `${path}.frame`, 'frame', faults);
  if (frame === null) return null;
  const size = find(frame.sizes, ({ id }) => id, request.size, `${path}.size`, 'size of this frame', faults);
  const colourway = find(
    frame.colourways,
    ({ code }) => code,
    request.colourway,
    `${path}.colourway`,
    'colourway of this frame',
    faults,
  );
  return size && colourway && { frame, size, colourway };
}

function resolveLenses(
  offer: Offer,
  asked: LensesRequest,
  path: string,
  faults: Fault[],
): ResolvedLenses | null {
  const before = faults.length;
  const byId = ({ id }: { readonly id: string }) => id;
  const design = find(offer.designs, byId, asked.design, `${path}.design`, 'design', faults);
  const material = find(offer.materials, byId, asked.material, `${path}.material`, 'material', faults);
  const tint =
    asked.tint === null ? null : find(offer.tints, byId, asked.tint, `${path}.tint`, 'tint', faults);
  const coating =
    asked.coating === null
      ? null
      : find(offer.coatings, byId, asked.coating, `${path}.coating`, 'coating', faults);
  return faults.length === before && design && material ? { design, material, tint, coating } : null;
}

/** The one that is named; an absent name is fine where there is only one to choose. */
function find<T>(
  all: readonly T[],
  nameOf: (one: T) => string,
  name: string | undefined,
  path: string,
  noun: string,
  faults: Fault[],
): T | null {
  const [first] = all;
  if (name === undefined && all.length === 1 && first !== undefined) return first;
  const found = all.find((one) => nameOf(one) === name);
  if (found !== undefined) return found;
  faults.push({
    path,
    message:
      name === undefined ? `A ${noun} must be chosen.` : `There is no ${noun} of this name in the shop.`,
    expected: all.map(nameOf).join(', ') || `a ${noun} (the shop has none)`,
    found: name === undefined ? 'nothing' : name,
  });
  return null;
}
