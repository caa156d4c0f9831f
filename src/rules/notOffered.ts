import type { Outcome } from './finding.ts';
import type { Rule } from './rule.ts';
import type { Situation } from './situation.ts';

type Kind = 'design' | 'material' | 'tint' | 'coating';

/** Pairs of chosen options that the shop does not declare together, by their kinds. */
export function pairsNotOffered({
  design,
  material,
  tint,
  coating,
}: Situation): readonly (readonly [Kind, Kind])[] {
  const found: [Kind, Kind][] = [];
  if (!design.materials.includes(material.id)) found.push(['design', 'material']);
  if (tint !== null && !tint.materials.includes(material.id)) found.push(['tint', 'material']);
  if (tint !== null && !tint.designs.includes(design.id)) found.push(['tint', 'design']);
  if (coating !== null && !coating.materials.includes(material.id)) found.push(['coating', 'material']);
  if (coating !== null && tint !== null && !coating.tints.includes(tint.id)) found.push(['coating', 'tint']);
  return found;
}

/** What the shop does not declare together is not offered together. */
export const notOffered: Rule = {
  id: 'not-offered',
  asks: 'options',
  clearedBy: 'choice',
  check: (situation) =>
    pairsNotOffered(situation).map(
      ([one, other]): Outcome => ({
        message: 'together',
        level: 'stop',
        eye: 'both',
        figures: { one: situation[one]?.name ?? '', other: situation[other]?.name ?? '' },
      }),
    ),
};
