/** Which of the other chosen things an option does not go with, by what the shop declares. */
import type { OptionKind } from '../catalogue/limit.ts';
import { brokenLimits } from '../rules/declaredLimit.ts';
import { pairsNotOffered } from '../rules/notOffered.ts';
import type { Situation } from '../rules/situation.ts';

const ORDER = ['design', 'material', 'tint', 'coating', 'mounting', 'wearer', 'frame'] as const;

/** Kinds of the chosen things that the option of this kind excludes, each once, from design to frame. */
export function excludedBy(situation: Situation, kind: OptionKind): readonly OptionKind[] {
  const { material, frame } = situation;
  const together: (readonly OptionKind[])[] = [
    ...pairsNotOffered(situation),
    ...brokenLimits(situation)
      .filter(({ limit }) => limit.level === 'stop')
      .map(({ owner, partners }) => [owner, ...partners]),
    ...(material.mountings.includes(frame.mounting) ? [] : [['material', 'mounting'] as const]),
  ];
  const against = new Set(together.filter((kinds) => kinds.includes(kind)).flat());
  return ORDER.filter((one) => one !== kind && against.has(one));
}
