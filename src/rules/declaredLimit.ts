import type { DeclaredLimit, OptionKind } from '../catalogue/limit.ts';
import type { Outcome } from './finding.ts';
import type { Rule } from './rule.ts';
import type { Situation } from './situation.ts';

/** A limit that a package breaks: whose it is, and which other choices it breaks it by. */
export interface BrokenLimit {
  readonly owner: 'design' | 'material' | 'tint' | 'coating';
  readonly limit: DeclaredLimit;
  readonly partners: readonly OptionKind[];
}

/** Every declared limit that a package breaks. */
export function brokenLimits(situation: Situation): readonly BrokenLimit[] {
  const chosen = choices(situation);
  return (['design', 'material', 'tint', 'coating'] as const).flatMap((owner) =>
    (situation[owner]?.limits ?? []).flatMap((limit) => {
      const partners = breaks(limit, chosen);
      return partners.length === 0 ? [] : [{ owner, limit, partners }];
    }),
  );
}

/** The owner's own `only-with` and `not-with`, each with the owner's reason. */
export const declaredLimit: Rule = {
  id: 'declared-limit',
  asks: 'options',
  clearedBy: 'choice',
  check: (situation) =>
    brokenLimits(situation).map(
      ({ owner, limit }): Outcome => ({
        message: 'declared',
        level: limit.level,
        eye: 'both',
        figures: { option: situation[owner]?.name ?? '', because: limit.because },
      }),
    ),
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

/** The choices that a limit is broken by: those that `only-with` does not name, or all that `not-with` names. */
function breaks({ kind, ids }: DeclaredLimit, chosen: Record<OptionKind, string>): readonly OptionKind[] {
  const named = Object.keys(ids) as OptionKind[];
  const apart = named.filter((of) => !(ids[of]?.includes(chosen[of]) ?? true));
  if (kind === 'only-with') return apart;
  return apart.length > 0 ? [] : named;
}
