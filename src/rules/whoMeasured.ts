import type { Outcome } from './finding.ts';
import { type Rule, servesUse } from './rule.ts';

/** A child's measurements, and heights for a near part, are best taken by somebody who fits glasses. */
export const whoMeasured: Rule = {
  id: 'who-measured',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { design, use, wearer, right, left } = situation;
    // Where a measurement is missing, that is said instead.
    if (use === 'none' || right.pdMm === null || left.pdMm === null) return [];
    const found: Outcome[] = [];
    if (wearer === 'child') found.push({ message: 'child', level: 'note', eye: 'both', figures: {} });
    const needsHeight = design.corridor !== null || design.segment !== null;
    const measured = (name: 'fittingHeightMm' | 'segmentHeightMm') =>
      right[name] !== null && left[name] !== null;
    if (
      servesUse(situation) &&
      needsHeight &&
      measured(design.segment === null ? 'fittingHeightMm' : 'segmentHeightMm')
    )
      found.push({ message: 'height', level: 'note', eye: 'both', figures: { design: design.name } });
    return found;
  },
};
