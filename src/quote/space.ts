/**
 * Every package of one frame, size and colourway: verdict and price of each design, material, tint and coating. What
 * tint and coating cannot change is computed once for all of them; nothing is kept from one prescription to the next.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Level, Outcome } from '../rules/finding.ts';
import { DECIDING_RULES } from '../rules/rules.ts';
import type { Situation } from '../rules/situation.ts';
import type { Verdict } from './answer.ts';
import type { PairRequest, QuoteRequest } from './request.ts';
import { type ResolvedPair, resolvePair } from './resolve.ts';
import { situate } from './situation.ts';
import { stockRangesFor } from './stockBlank.ts';
import { orderTotal } from './total.ts';

/** One package. Lens options by id; the situation is that of its lenses, shared with others like it. */
export interface Package {
  readonly design: string;
  readonly material: string;
  readonly tint: string;
  readonly coating: string;
  readonly verdict: Verdict;
  /** Of the whole order with this package, minor units; null where there is no price. */
  readonly totalMinor: number | null;
  readonly situation: Situation;
}

const LENS_RULES = DECIDING_RULES.filter(({ asks }) => asks === 'lens');
const OPTION_RULES = DECIDING_RULES.filter(({ asks }) => asks === 'options');

/** All packages for the pair at `at` of a request whose names are known; empty where they are not. */
export function packagesOf(offer: Offer, request: QuoteRequest, at: number): readonly Package[] {
  const present = request.pairs[at];
  const resolved = present && resolvePair(offer, present, '', []);
  if (!present || !resolved) return [];
  const ofOrder = orderTotal(offer, request, at);
  const tintsNamed = offer.promotions.some(({ scope }) => scope.tints !== null);
  const coatingsNamed = offer.promotions.some(({ scope }) => scope.coatings !== null);
  const total: Total = (situation, known) => {
    // Of one lens, what tint and coating cost together decides, unless a promotion names them.
    const { tint, coating } = situation;
    const named = `${tintsNamed ? tint?.id : ''} ${coatingsNamed ? coating?.id : ''}`;
    const key = `${(tint?.priceMinor ?? 0) + (coating?.priceMinor ?? 0)} ${named}`;
    let minor = known.get(key);
    if (minor === undefined) {
      minor = ofOrder(resolved.shopFrame, situation);
      known.set(key, minor);
    }
    return minor;
  };
  return offer.designs.flatMap((design) =>
    offer.materials.flatMap((material) =>
      lensPackages(offer, request.date, present, resolved, { design, material }, total),
    ),
  );
}

/** The total; `known` holds those of the same lens in other tints and coatings. */
type Total = (situation: Situation, known: Map<string, number | null>) => number | null;

/** What tint and coating leave alone. */
interface Base {
  readonly situation: Situation;
  readonly level: Level | null;
  readonly totals: Map<string, number | null>;
}

type Lens = Pick<ResolvedPair['lenses'], 'design' | 'material'>;

function lensPackages(
  offer: Offer,
  date: string,
  present: PairRequest,
  { frame }: ResolvedPair,
  lens: Lens,
  total: Total,
): Package[] {
  const found: Package[] = [];
  const made = new Map<string, Base>();
  for (const tint of offer.tints)
    for (const coating of offer.coatings) {
      const ranges = stockRangesFor(lens.design, lens.material, tint.id, coating.id);
      const key = ranges.map(({ id }) => id).join(' ');
      let base = made.get(key);
      if (base === undefined) {
        const situation = situate(offer.shop.habits, date, present, frame, { ...lens, tint, coating });
        const level = hardestLevel(LENS_RULES.flatMap((rule) => rule.check(situation)));
        base = { situation, level, totals: new Map() };
        made.set(key, base);
      }
      const situation = { ...base.situation, tint, coating };
      const level =
        base.level === 'stop'
          ? 'stop'
          : harder(base.level, hardestLevel(OPTION_RULES.flatMap((rule) => rule.check(situation))));
      found.push({
        design: lens.design.id,
        material: lens.material.id,
        tint: tint.id,
        coating: coating.id,
        verdict: level === 'stop' ? 'refused' : level === 'caution' ? 'care' : 'makeable',
        totalMinor: total(situation, base.totals),
        situation,
      });
    }
  return found;
}

const RANK = { stop: 3, caution: 2, note: 1 } as const;
const rank = (level: Level | null) => (level === null ? 0 : RANK[level]);

const harder = (one: Level | null, other: Level | null) => (rank(one) >= rank(other) ? one : other);

const hardestLevel = (outcomes: readonly Outcome[]): Level | null =>
  outcomes.reduce<Level | null>((most, { level }) => harder(most, level), null);
