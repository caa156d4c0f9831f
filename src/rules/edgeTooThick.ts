import { eachEye, type Rule } from './rule.ts';

/** From some edge on a lens is not worth wearing, whatever geometry allows: the shop's own limit. */
export const edgeTooThick: Rule = {
  id: 'edge-too-thick',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens }) =>
      lens !== null && lens.thickest.mm > situation.habits.mostEdgeMm
        ? {
            message: 'refused',
            level: 'stop',
            eye,
            figures: {
              thickestMm: lens.thickest.mm,
              atDeg: lens.thickest.atDeg,
              mostMm: situation.habits.mostEdgeMm,
            },
          }
        : null,
    ),
};
