/** Findings of packages that are compared: most say the same as those of the package before, and are written once. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Figures } from '../rules/finding.ts';
import type { Finding } from './answer.ts';
import { type RuleOutcome, toFinding } from './judge.ts';

/** An outcome's finding. */
export type Said = (outcome: RuleOutcome) => Finding;

/** As `toFinding`; outcomes that are alike have one finding. */
export function saidOnce(offer: Offer): Said {
  const known = new Map<string, Finding[]>();
  return (outcome) => {
    const key = `${outcome.rule}.${outcome.message} ${outcome.eye} ${outcome.level}`;
    const alike = known.get(key) ?? [];
    const found = alike.find(({ figures }) => areSame(figures, outcome.figures));
    if (found !== undefined) return found;
    const made = toFinding(offer, outcome);
    known.set(key, [...alike, made]);
    return made;
  };
}

/** Whether both have the same figures in the same order. */
function areSame(one: Figures, other: Figures): boolean {
  const [keys, others] = [Object.keys(one), Object.keys(other)];
  return (
    keys.length === others.length && keys.every((key, at) => key === others[at] && one[key] === other[key])
  );
}
