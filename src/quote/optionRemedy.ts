/** What else to choose so that an option goes: the cheapest of the options that it does not go with as they stand. */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import { DECIDING_RULES } from '../rules/rules.ts';
import type { Situation } from '../rules/situation.ts';
import type { Finding, Remedy } from './answer.ts';
import { CHANGE_KINDS, changeName, type PackageChange } from './change.ts';
import { excludedBy } from './excluded.ts';
import { judge } from './judge.ts';
import type { JudgedPair, SituatedPair } from './judgePair.ts';
import type { LensesRequest, PairRequest } from './request.ts';
import type { Said } from './sentences.ts';

type LensChoice = 'design' | 'material' | 'tint' | 'coating';

interface Ways {
  readonly offer: Offer;
  readonly pair: PairRequest;
  readonly situated: (lenses: LensesRequest) => SituatedPair | null;
  readonly said: Said;
  readonly price: (pair: SituatedPair | null) => number | null;
  /** Whether a stop is met by every option of the kind: no other choice beside this option is asked to clear it. */
  readonly isShared: (finding: Finding) => boolean;
}

/** The smallest kind of change first, then money; null where no single one lets the option go. */
export function optionRemedy(
  ways: Ways,
  kind: LensChoice | 'blank',
  id: string,
  judged: JudgedPair,
): Remedy | null {
  if (kind === 'blank') return null;
  const { offer, pair, situated, price } = ways;
  const lenses = { ...pair.lenses, [kind]: id };
  const mirror = judged.answer.findings.some(({ rule }) => rule === 'mirror-coating');
  const against = [...excludedBy(judged.situation, kind), ...(mirror ? ['tint', 'coating'] : [])];
  const kinds = CHANGE_KINDS.filter(
    (one): one is LensChoice => one !== kind && against.includes(one) && one in IDS,
  );
  for (const one of kinds) {
    const able = IDS[one](offer).flatMap((value) => {
      const other = situated({ ...lenses, [one]: value });
      if (other === null || isStopped(ways, other.situation)) return [];
      return [{ value, totalMinor: price(other) ?? Infinity }];
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

/** Whether a rule stops it by itself: the first that does is enough, and no other sentence is written. */
const isStopped = ({ said, isShared }: Ways, situation: Situation): boolean =>
  DECIDING_RULES.some((rule) =>
    judge(situation, [rule]).some((outcome) => outcome.level === 'stop' && !isShared(said(outcome))),
  );

const IDS: Readonly<Record<LensChoice, (offer: Offer) => readonly string[]>> = {
  design: ({ designs }) => designs.map(({ id }) => id),
  material: ({ materials }) => materials.map(({ id }) => id),
  tint: ({ tints }) => tints.map(({ id }) => id),
  coating: ({ coatings }) => coatings.map(({ id }) => id),
};
