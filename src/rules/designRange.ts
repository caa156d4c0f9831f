import { toMinusCylinder } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { Outcome } from './finding.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule, servesUse } from './rule.ts';

/** Sphere, cylinder, add and prism that the design is made in. */
export const designRange: Rule = {
  id: 'design-range',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, ordered, orderedAddD, prescribed }) => {
      if (ordered === null || !servesUse(situation)) return null;
      const { sphereD: range, cylinderD: most, addD: adds, prism: mostPrism, name } = situation.design;
      const found: Outcome[] = [];
      const stop = (message: string, figures: Outcome['figures']) =>
        found.push({ message, level: 'stop', eye, figures: { design: name, ...figures } });
      const { sphereD, cylinderD } = toMinusCylinder(ordered);
      if (sphereD < range.from || sphereD > range.to)
        stop('sphere', { sphereD: round2(sphereD), fromD: range.from, toD: range.to });
      if (-cylinderD > most) stop('cylinder', { cylinderD: round2(cylinderD), mostD: -most });
      if (adds !== null && orderedAddD > 0 && (orderedAddD < adds.from || orderedAddD > adds.to))
        stop('add', { addD: orderedAddD, fromD: adds.from, toD: adds.to });
      const prism = round2(prismAmount(prescribed.prism));
      if (situation.use !== 'none' && prism > mostPrism) stop('prism', { prism, mostPrism });
      return found;
    }),
};
