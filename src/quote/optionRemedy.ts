/** What else to choose so that an option goes: the cheapest of the options that it does not go with as they stand. */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Remedy } from './answer.ts';
import { CHANGE_KINDS, changeName, type PackageChange } from './change.ts';
import { excludedBy } from './excluded.ts';
import type { JudgedPair } from './judgePair.ts';

import type { LensesRequest, PairRequest } from './request.ts';

type LensChoice = 'design' | 'material' | 'tint' | 'coating';

interface Ways {
  readonly offer: Offer;
  readonly pair: PairRequest;
  readonly judge: (lenses: LensesRequest) => JudgedPair | null;
  readonly price: (judged: JudgedPair | null) => number | null;
  /** Whether a stop is met by every option of the kind: no other choice beside this option is asked to clear it. */
  readonly isShared: (finding: JudgedPair['answer']['findings'][number]) => boolean;
}

/** The smallest kind of change first, then money; null where no single one lets the option go. */
export function optionRemedy(
  { offer, pair, judge, price, isShared }: Ways,
  kind: LensChoice | 'blank',
  id: string,
): Remedy | null {
  const lenses = { ...pair.lenses, [kind]: id };
  const judged = judge(lenses);
  if (judged === null || kind === 'blank') return null;
  const mirror = judged.answer.findings.some(({ rule }) => rule === 'mirror-coating');
  const against = [...excludedBy(judged.situation, kind), ...(mirror ? ['tint', 'coating'] : [])];
  const kinds = CHANGE_KINDS.filter(
    (one): one is LensChoice => one !== kind && against.includes(one) && one in IDS,
  );
  for (const one of kinds) {
    const able = IDS[one](offer).flatMap((value) => {
      const other = judge({ ...lenses, [one]: value });
      const stops = other?.answer.findings.some((finding) => finding.level === 'stop' && !isShared(finding));
      return other === null || stops ? [] : [{ value, totalMinor: price(other) ?? Infinity }];
    });
    const [best] = able.sort((a, b) => a.totalMinor - b.totalMinor);
    if (best === undefined) continue;
    const change: PackageChange = { kind: one, value: best.value };
    return {
      change,
      message: say(offer.words, 'remedy.with', { name: changeName(offer, { ...pair, lenses }, change) }),
    };
  }
  return null;
}

const IDS: Readonly<Record<LensChoice, (offer: Offer) => readonly string[]>> = {
  design: ({ designs }) => designs.map(({ id }) => id),
  material: ({ materials }) => materials.map(({ id }) => id),
  tint: ({ tints }) => tints.map(({ id }) => id),
  coating: ({ coatings }) => coatings.map(({ id }) => id),
};
