import type { Outcome } from './finding.ts';
import type { Rule } from './rule.ts';

/** Sizes and colourways that are not made together, and what is in stock. */
export const frameCombination: Rule = {
  id: 'frame-combination',
  asks: 'lens',
  clearedBy: 'choice',
  check({ frame }) {
    const figures = { size: frame.sizeName ?? '', colourway: frame.colourwayName };
    const outcomes: Outcome[] = frame.notOffered
      .filter(({ size, colourway }) => size === frame.size && colourway === frame.colourway)
      .map(({ because }) => ({
        message: 'not-made',
        level: 'stop',
        eye: 'both',
        figures: { ...figures, because },
      }));
    if (frame.stock === 'sold-out')
      outcomes.push({ message: 'sold-out', level: 'stop', eye: 'both', figures });
    if (frame.stock === 'made-to-order')
      outcomes.push({ message: 'to-order', level: 'note', eye: 'both', figures });
    return outcomes;
  },
};
