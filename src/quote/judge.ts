/** All rules asked about a situation; their outcomes become findings with sentences, and findings a verdict. */
import type { Offer, Words } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Outcome } from '../rules/finding.ts';
import type { Rule } from '../rules/rule.ts';
import { RULES } from '../rules/rules.ts';
import type { Situation } from '../rules/situation.ts';
import type { Finding, Verdict } from './answer.ts';
import { shownFigures } from './shownFigures.ts';
import { shownPlace, shownPrism } from './shownPlace.ts';

/** One rule's outcome. */
export interface RuleOutcome extends Outcome {
  readonly rule: string;
}

/** What rules say of a package, stops first: every one, or those given. */
export function judge(situation: Situation, rules: readonly Rule[] = RULES): readonly RuleOutcome[] {
  const outcomes = rules.flatMap(({ id, check }) =>
    check(situation).map((outcome) => ({ rule: id, ...outcome })),
  );
  const rank = { stop: 0, caution: 1, note: 2 };
  return outcomes.sort((one, other) => rank[one.level] - rank[other.level]);
}

/** `refused` with any stop, `care` with any caution, else `makeable`. */
export function verdictOf(outcomes: readonly { readonly level: Outcome['level'] }[]): Verdict {
  if (outcomes.some(({ level }) => level === 'stop')) return 'refused';
  return outcomes.some(({ level }) => level === 'caution') ? 'care' : 'makeable';
}

/** The harder of verdicts: a basket is as makeable as its hardest pair. */
export function hardest(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes('refused')) return 'refused';
  return verdicts.includes('care') ? 'care' : 'makeable';
}

/** The outcome with its sentence in the shop's words and language. */
export function toFinding(
  { words, shop }: Pick<Offer, 'words' | 'shop'>,
  { rule, level, eye, figures, message }: RuleOutcome,
): Finding {
  const shown = shownFigures(words, shop.language, figures);
  const slots = {
    eye: say(words, `eye.${eye}`),
    ...shown,
    ...onLens(words, eye, figures),
    ...(typeof figures['cause'] === 'string' ? { cause: say(words, `worn.${figures['cause']}`, shown) } : {}),
  };
  return { rule, level, eye, figures, message: say(words, `rule.${rule}.${message}`, slots), remedy: null };
}

/** Angles as a wearer would say them: degrees stay among the figures. */
function onLens(words: Words, eye: Outcome['eye'], { atDeg, prism, baseDeg }: Outcome['figures']) {
  if (eye === 'both') return {};
  const isPrism = typeof prism === 'number' && typeof baseDeg === 'number';
  return {
    ...(typeof atDeg === 'number' ? { place: shownPlace(words, eye, atDeg) } : {}),
    ...(isPrism ? { bases: shownPrism(words, eye, { amount: prism, baseDeg }) } : {}),
  };
}
