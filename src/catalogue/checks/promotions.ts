/** Dates, codes and gifts of promotions. */
import { type AuthoredPromotion, type Check, type Content, faultsOf, sound } from '../content.ts';
import type { ContentFault, FaultDetail } from '../fault.ts';
import { faultAt } from '../reading/entry.ts';

function datesFault({ starts, ends }: AuthoredPromotion): FaultDetail | null {
  if (starts === null || ends === null || starts <= ends) return null;
  return {
    code: 'dates-reversed',
    expected: `a last day from ${starts} on, the first day`,
    received: ends,
    hint: 'Exchange starts and ends, or mend the year.',
  };
}

/** Whether both hold on some day. */
function overlap(a: AuthoredPromotion, b: AuthoredPromotion): boolean {
  return (a.starts ?? '') <= (b.ends ?? '9999') && (b.starts ?? '') <= (a.ends ?? '9999');
}

function codeFaults({ promotions }: Content): ContentFault[] {
  const all = sound(promotions);
  return all.flatMap(({ origin, value }, index) => {
    const code = value.code?.toLowerCase();
    if (code === undefined) return [];
    const other = all
      .slice(0, index)
      .find((one) => one.value.code?.toLowerCase() === code && overlap(one.value, value));
    if (other === undefined) return [];
    const detail: FaultDetail = {
      code: 'code-taken',
      expected: 'a code of its own, small and capital letters being the same',
      received: `"${value.code}", which promotions/${other.id} has as well`,
      hint: 'Change one of the codes, or part the dates.',
    };
    return [faultAt(origin, ['code'], detail)];
  });
}

const goesWith = (ids: 'all' | readonly string[], id: string) => ids === 'all' || ids.includes(id);

/** The included lenses must be a package that the shop offers; unknown ids are named elsewhere. */
function giftFault({ gift }: AuthoredPromotion, content: Content): FaultDetail | null {
  if (gift.kind !== 'included-lens') return null;
  const find = <T>(entries: readonly { id: string; value: T }[], id: string | null) =>
    entries.find((entry) => entry.id === id)?.value;
  const design = find(sound(content.designs), gift.design);
  const tint = find(sound(content.tints), gift.tint);
  const coating = find(sound(content.coatings), gift.coating);
  const lacks = [
    design && !goesWith(design.materials, gift.material) && `${gift.design} is not made in ${gift.material}`,
    tint && !goesWith(tint.materials, gift.material) && `${gift.tint} is not made in ${gift.material}`,
    tint && !goesWith(tint.designs, gift.design) && `${gift.tint} is not made in ${gift.design}`,
    coating &&
      !goesWith(coating.materials, gift.material) &&
      `${gift.coating} is not put on ${gift.material}`,
    coating &&
      gift.tint !== null &&
      !goesWith(coating.tints, gift.tint) &&
      `${gift.coating} does not go with ${gift.tint}`,
  ].filter((lack) => typeof lack === 'string');
  if (lacks.length === 0) return null;
  return {
    code: 'gift-not-offered',
    expected: 'lenses that the shop offers',
    received: lacks.join('; '),
    hint: 'Name another material, tint or coating, or extend the lists of these options.',
  };
}

/** Faults of promotions that their schema cannot see. */
export const checkPromotions: Check = (content) => [
  ...codeFaults(content),
  ...faultsOf(
    content.promotions,
    ({ origin, value }) => {
      const dates = datesFault(value);
      return dates === null ? [] : [faultAt(origin, ['ends'], dates)];
    },
    ({ origin, value }) => {
      const gift = giftFault(value, content);
      return gift === null ? [] : [faultAt(origin, ['gift', 'includedLens'], gift)];
    },
  ),
];
