/** Names in a request that the shop does not have, each with what it has and what was probably meant. */
import type { Offer } from '../catalogue/catalogue.ts';
import { nearest } from '../catalogue/nearest.ts';
import { at } from './againstSchema.ts';
import { didYouMean, type Fault } from './fault.ts';

/** The fault of a name that is missing, or that none of `known` is. */
export function unnamed(
  known: readonly string[],
  name: string | undefined,
  path: string,
  noun: string,
): Fault {
  const all = known.join(', ') || `a ${noun} (the shop has none)`;
  return {
    path,
    message:
      name === undefined ? `A ${noun} must be chosen.` : `There is no ${noun} of this name in the shop.`,
    expected: all + didYouMean(name === undefined ? null : nearest(name, known)),
    found: name ?? 'nothing',
  };
}

/** Unknown names in a pair of any shape: only texts are looked at. */
export function nameFaults(offer: Offer, pair: unknown, path: string): Fault[] {
  const faults: Fault[] = [];
  const look = (place: readonly string[], noun: string, known: readonly string[]) => {
    const name = at(pair, place);
    if (typeof name === 'string' && !known.includes(name))
      faults.push(unnamed(known, name, [path, ...place].join('.'), noun));
  };
  const ids = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);
  look(['frame'], 'frame', ids(offer.frames));
  const frame = offer.frames.find(({ id }) => id === at(pair, ['frame']));
  if (frame !== undefined) {
    look(['size'], 'size of this frame', ids(frame.sizes));
    look(
      ['colourway'],
      'colourway of this frame',
      frame.colourways.map(({ code }) => code),
    );
  }
  look(['lenses', 'design'], 'design', ids(offer.designs));
  look(['lenses', 'material'], 'material', ids(offer.materials));
  look(['lenses', 'tint'], 'tint', ids(offer.tints));
  look(['lenses', 'coating'], 'coating', ids(offer.coatings));
  return faults;
}
