import type { Outcome } from './finding.ts';
import type { Rule } from './rule.ts';

/** What the shop does not declare together is not offered together. */
export const notOffered: Rule = {
  id: 'not-offered',
  asks: 'options',
  clearedBy: 'choice',
  check: ({ design, material, tint, coating }) => {
    const found: Outcome[] = [];
    const stop = (one: { name: string }, other: { name: string }) =>
      found.push({
        message: 'together',
        level: 'stop',
        eye: 'both',
        figures: { one: one.name, other: other.name },
      });
    if (!design.materials.includes(material.id)) stop(design, material);
    if (tint !== null && !tint.materials.includes(material.id)) stop(tint, material);
    if (tint !== null && !tint.designs.includes(design.id)) stop(tint, design);
    if (coating !== null && !coating.materials.includes(material.id)) stop(coating, material);
    if (coating !== null && tint !== null && !coating.tints.includes(tint.id)) stop(coating, tint);
    return found;
  },
};
