import type { DeclaredLimit, OptionKind } from '../catalogue/limit.ts';
import type { Outcome } from './finding.ts';
import type { Rule } from './rule.ts';
import type { Situation } from './situation.ts';

/** The owner's own `only-with` and `not-with`, each with the owner's reason. */
export const declaredLimit: Rule = {
  id: 'declared-limit',
  asks: 'options',
  clearedBy: 'choice',
  check(situation) {
    const chosen = choices(situation);
    const options = [situation.design, situation.material, situation.tint, situation.coating];
    return options.flatMap((option) =>
      option === null
        ? []
        : option.limits
            .filter((limit) => breaks(limit, chosen))
            .map(
              (limit): Outcome => ({
                message: 'declared',
                level: limit.level,
                eye: 'both',
                figures: { option: option.name, because: limit.because },
              }),
            ),
    );
  },
};

function choices({ design, material, tint, coating, frame, wearer }: Situation): Record<OptionKind, string> {
  return {
    design: design.id,
    material: material.id,
    tint: tint?.id ?? '',
    coating: coating?.id ?? '',
    mounting: frame.mounting,
    wearer,
    frame: frame.id ?? '',
  };
}

function breaks({ kind, ids }: DeclaredLimit, chosen: Record<OptionKind, string>): boolean {
  const agrees = (Object.keys(ids) as OptionKind[]).map((of) => ids[of]?.includes(chosen[of]) ?? true);
  return kind === 'only-with' ? agrees.includes(false) : !agrees.includes(false);
}
