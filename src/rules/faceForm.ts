import type { Rule } from './rule.ts';

/** A design holds its powers only up to some wrap. */
export const faceForm: Rule = {
  id: 'face-form',
  asks: 'lens',
  clearedBy: 'choice',
  check: ({ frame, design, use }) =>
    use !== 'none' && frame.faceFormDeg > design.faceFormDeg
      ? [
          {
            message: 'wrapped',
            level: 'stop',
            eye: 'both',
            figures: { design: design.name, faceFormDeg: frame.faceFormDeg, mostDeg: design.faceFormDeg },
          },
        ]
      : [],
};
