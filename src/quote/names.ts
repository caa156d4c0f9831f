/**
 * Names in a request that the shop does not have, each with what it has and what was probably meant. For the terminal:
 * the worksheet only offers names that there are.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { nearest } from '../catalogue/nearest.ts';
import { at } from './againstSchema.ts';
import { didYouMean, type Fault } from './fault.ts';
import type { QuoteRequest } from './request.ts';

/** Unknown names in a pair of any shape: only texts are looked at. */
export function nameFaults(offer: Offer, pair: unknown, path: string): Fault[] {
  const faults: Fault[] = [];
  const look = (place: readonly string[], noun: string, known: readonly string[]) => {
    const name = at(pair, place);
    if (typeof name === 'string' && !known.includes(name))
      faults.push({
        path: [path, ...place].join('.'),
        message: `There is no ${noun} of this name in the shop.`,
        expected: (known.join(', ') || `a ${noun} (the shop has none)`) + didYouMean(nearest(name, known)),
        found: name,
      });
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

/** The faults of a request with what was probably meant beside each unknown name. */
export function withMeant(offer: Offer, request: QuoteRequest, faults: readonly Fault[]): readonly Fault[] {
  const named = request.pairs.flatMap((pair, index) => nameFaults(offer, pair, `pairs.${index}`));
  const byPath = new Map(named.map((fault) => [fault.path, fault]));
  return faults.map((fault) => byPath.get(fault.path) ?? fault);
}
