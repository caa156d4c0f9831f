import type { Outcome } from './finding.ts';
import type { EyeSituation, Situation } from './situation.ts';

/** One reason for which a package is refused, done with care, or worth a word. */
export interface Rule {
  /** Permanent; also the page that explains it. */
  readonly id: string;
  /**
   * `options` where tint or coating decide too; `lens` where they do not, so that a whole range of tints and coatings
   * is served by one answer.
   */
  readonly asks: 'lens' | 'options';
  /** `choice`: another choice in the shop may clear it; `person`: only the shopper, a prescriber or the shop can. */
  readonly clearedBy: 'choice' | 'person';
  /** Never more than a note, and slow to ask: where verdicts alone are wanted it is left out. */
  readonly notesOnly?: true;
  /** Outcomes for this package, none where the rule is content. */
  readonly check: (situation: Situation) => readonly Outcome[];
}

/** Whether the design is made for the use at all; where it is not, what the design asks for says nothing. */
export const servesUse = ({ design, use }: Situation): boolean => design.uses.includes(use);

/** Whether the eyes work together, so that what one lens does against the other is felt. */
export const seesWithBoth = ({ wearer, right, left }: Situation): boolean =>
  wearer !== 'one-eyed' && !right.prescribed.balance && !left.prescribed.balance;

/** The outcomes of a check that looks at one eye at a time, right first. */
export function eachEye(
  situation: Situation,
  check: (eye: EyeSituation) => Outcome | readonly Outcome[] | null,
): readonly Outcome[] {
  return [check(situation.right), check(situation.left)].flatMap((outcome) => outcome ?? []);
}
