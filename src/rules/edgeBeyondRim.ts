import { eachEye, type Rule } from './rule.ts';

/** How much of the edge the rim leaves to be seen. */
export const edgeBeyondRim: Rule = {
  id: 'edge-beyond-rim',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens }) =>
      lens !== null && lens.beyondRimMm >= situation.habits.beyondRimFromMm
        ? {
            message: situation.frame.rimDepthMm > 0 ? 'beyond' : 'open',
            // A grooved or drilled lens always shows its edge; a rim that does not hide it is a surprise.
            level: situation.frame.rimDepthMm > 0 ? 'caution' : 'note',
            eye,
            figures: {
              beyondMm: lens.beyondRimMm,
              thickestMm: lens.thickest.mm,
              atDeg: lens.thickest.atDeg,
              rimMm: situation.frame.rimDepthMm,
              fromMm: situation.habits.beyondRimFromMm,
            },
          }
        : null,
    ),
};
