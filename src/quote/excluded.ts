/** Which of the other chosen things an option does not go with, by what the shop declares. */
import type { Words } from '../catalogue/catalogue.ts';
import type { OptionKind } from '../catalogue/limit.ts';
import { say } from '../catalogue/words.ts';
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

/** The same as a sentence with the names of the chosen things; null where it goes with all of them. */
export function excludedSentence(words: Words, situation: Situation, kind: OptionKind): string | null {
  const names = excludedBy(situation, kind).map((one) =>
    one === 'design' || one === 'material' || one === 'tint' || one === 'coating'
      ? (situation[one]?.name ?? '')
      : say(words, `worksheet.trade.with.${one}`),
  );
  return names.length === 0 ? null : say(words, 'worksheet.trade.excludes', { names: names.join(', ') });
}
