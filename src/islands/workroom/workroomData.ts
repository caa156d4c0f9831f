/** What the workroom's page needs of the shop: all but stories, prose pages and the words of the shop's own pages. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { WorkroomOffer } from '../../workroom/openJob.ts';

/** Spoken on pages of the shop alone. Findings and prices draw on many groups, so that the others all come along. */
const ELSEWHERE = /^(?:page|basket|list|link|opened|compare|aside|damaged|keeping|drawing|entry)\./;

/** The part of an offer that goes into the page. Nothing that is judged or priced is left out. */
export function workroomData(offer: WorkroomOffer): WorkroomOffer {
  const untold = <T extends { readonly story: string }>(all: readonly T[]): T[] =>
    all.map((one) => ({ ...one, story: '' }));
  const words: Words = Object.fromEntries(
    Object.entries(offer.words).filter(([key]) => !ELSEWHERE.test(key)),
  );
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
