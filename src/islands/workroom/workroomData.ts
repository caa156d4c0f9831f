/** What the workroom's page needs of the shop: all but stories, prose pages and the words of the shop's own pages. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { WorkroomOffer } from '../../workroom/openJob.ts';

const WORDS = /^(?:rule|eye|use|verdict|price|remedy|alternative|way-out|order|workroom|workroomPage)\./;

/** The part of an offer that goes into the page. Nothing that is judged or priced is left out. */
export function workroomData(offer: WorkroomOffer): WorkroomOffer {
  const untold = <T extends { readonly story: string }>(all: readonly T[]): T[] =>
    all.map((one) => ({ ...one, story: '' }));
  const words: Words = Object.fromEntries(Object.entries(offer.words).filter(([key]) => WORDS.test(key)));
  const { shop, frames, designs, materials, tints, coatings, promotions, workroom } = offer;
  return {
    ...{ shop, workroom, words },
    frames: untold(frames),
    designs: untold(designs),
    materials: untold(materials),
    tints: untold(tints),
    coatings: untold(coatings),
    promotions: untold(promotions),
  };
}
