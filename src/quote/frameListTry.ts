/**
 * Packages of one frame, size and colourway judged one by one. Rules that stop a package before its lens is known
 * (a range, a mounting, a height) are asked first, since the lens is what takes time; and what tint and coating leave
 * alone is computed once.
 */
import type { ShopHabits } from '../catalogue/shop.ts';
import { round2 } from '../rules/round.ts';
import type { Rule } from '../rules/rule.ts';
import { DECIDING_RULES } from '../rules/rules.ts';
import type { Situation } from '../rules/situation.ts';
import type { Verdict } from './answer.ts';
import type { LensPackage } from './frameListPackages.ts';
import { type ListRequest, pairIn } from './frameListRequest.ts';
import { type ShopFrame, shopFrameShape } from './frameShape.ts';
import type { ResolvedLenses } from './resolvedLenses.ts';
import { situate } from './situation.ts';

/** A package as judged. */
export interface Judged {
  readonly verdict: Verdict;
  /** How many rules stop it. */
  readonly stops: number;
  /** null: stopped before its lens was computed. */
  readonly situation: Situation | null;
}

/** What rules say together. */
interface Said {
  readonly stops: number;
  readonly caution: boolean;
}

const LENS_RULES = DECIDING_RULES.filter(({ asks }) => asks === 'lens');
const OPTION_RULES = DECIDING_RULES.filter(({ asks }) => asks === 'options');

// What only a person can clear, a missing measurement among it, says nothing of a package that was not measured.
const byChoice = (rules: readonly Rule[]) => rules.filter(({ clearedBy }) => clearedBy === 'choice');
const LENS_CHOICES = byChoice(LENS_RULES);
const OPTION_CHOICES = byChoice(OPTION_RULES);

/** Judges packages in a place. */
export function judgeIn(
  place: ShopFrame,
  asked: ListRequest,
  habits: ShopHabits,
): (lenses: LensPackage) => Judged {
  const shape = shopFrameShape(place);
  const before = new Map<string, { readonly situation: Situation; readonly stops: number }>();
  const made = new Map<string, { readonly situation: Situation; readonly said: Said }>();
  const unmeasured = withoutPd(asked);

  const situateBy = (request: ListRequest, lenses: LensPackage) =>
    situate(habits, asked.date, pairIn(place, lenses, request, habits), shape, optionsOf(lenses));
  const beforeLens = (lenses: LensPackage) => {
    const key = `${lenses.design.id} ${lenses.material.id}`;
    let found = before.get(key);
    if (found === undefined) {
      const situation = situateBy(unmeasured, lenses);
      found = { situation, stops: ask(LENS_CHOICES, situation).stops };
      before.set(key, found);
    }
    const { tint, coating } = lenses;
    return found.stops + ask(OPTION_CHOICES, { ...found.situation, tint, coating }).stops;
  };
  const lensOf = (lenses: LensPackage) => {
    let found = made.get(lenses.lensKey);
    if (found === undefined) {
      const situation = situateBy(asked, lenses);
      found = { situation, said: ask(LENS_RULES, situation) };
      made.set(lenses.lensKey, found);
    }
    return found;
  };
  return (lenses) => {
    const early = beforeLens(lenses);
    if (early > 0) return { verdict: 'refused', stops: early, situation: null };
    const { tint, coating } = lenses;
    const lens = lensOf(lenses);
    const situation = { ...lens.situation, tint, coating };
    const options = ask(OPTION_RULES, situation);
    const stops = lens.said.stops + options.stops;
    const caution = lens.said.caution || options.caution;
    return { situation, stops, verdict: stops > 0 ? 'refused' : caution ? 'care' : 'makeable' };
  };
}

/** The lens options of a package alone. */
export const optionsOf = ({ design, material, tint, coating }: LensPackage): ResolvedLenses => ({
  design,
  material,
  tint,
  coating,
});

/** The request as if nobody had measured where the pupils are: no lens is then computed. */
export function withoutPd(asked: ListRequest): ListRequest {
  const { pd: _, nearPd: __, ...fit } = asked.fit;
  return { ...asked, fit };
}

function ask(rules: readonly Rule[], situation: Situation): Said {
  let stops = 0;
  let caution = false;
  for (const { check } of rules) {
    let stopped = false;
    for (const { level } of check(situation)) {
      if (level === 'stop') stopped = true;
      else if (level === 'caution') caution = true;
    }
    if (stopped) stops += 1;
  }
  return { stops, caution };
}

/** Thickest edge of both lenses, mm; null where no lens could be computed. */
export function thickestOf({ right, left }: Situation): number | null {
  if (right.lens === null || left.lens === null) return null;
  return round2(Math.max(right.lens.thickest.mm, left.lens.thickest.mm));
}
