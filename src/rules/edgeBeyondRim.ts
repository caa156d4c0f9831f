import { eachEye, type Rule } from './rule.ts';

/** Edge that any grooved or drilled lens has, mm: that much open edge is no news. Common practice. */
const USUAL_OPEN_EDGE_MM = 2;

const showing = (beyondMm: number, rimDepthMm: number) =>
  rimDepthMm > 0 ? beyondMm : beyondMm - USUAL_OPEN_EDGE_MM;

/** How much of the edge the rim leaves to be seen. */
export const edgeBeyondRim: Rule = {
  id: 'edge-beyond-rim',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens }) =>
      lens !== null &&
      showing(lens.beyondRimMm, situation.frame.rimDepthMm) >= situation.habits.beyondRimFromMm
        ? {
            message:
              situation.frame.rimDepthMm > 0
                ? 'beyond'
                : situation.frame.mounting === 'full'
                  ? 'unknown-rim'
                  : 'open',
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
