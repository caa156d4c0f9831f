/** A situation and its findings as the answer's figures, rounded. */
import { toMinusCylinder } from '../optics/prescription.ts';
import { addPrisms } from '../optics/prism.ts';
import { nasalSign, prismToPolar } from '../optics/prismBase.ts';
import type { PrismVector, SpheroCylinder } from '../optics/types.ts';
import { round2 } from '../rules/round.ts';
import type { EyeSituation, Situation } from '../rules/situation.ts';
import type { LensAnswer, PowerAnswer } from './answer.ts';

/** Figures of one eye; null where no lens could be computed. */
export function lensAnswer(situation: Situation, eye: EyeSituation): LensAnswer | null {
  const { lens, ordered, compensated, reference, orderedAddD } = eye;
  if (lens === null || ordered === null || reference === null) return null;
  const prism = situation.use === 'none' ? { x: 0, y: 0 } : eye.prescribed.prism;
  const { neededMm, usedMm, spareMm, kind } = lens.blank;
  return {
    ordered: powerAnswer(ordered, prism, orderedAddD),
    compensated: compensated && powerAnswer(compensated.power, compensated.prism, orderedAddD),
    baseCurveD: lens.baseCurveD,
    centreThicknessMm: lens.centreThicknessMm,
    governedBy: lens.governedBy,
    edgeThicknessMm: { thickest: lens.thickest, thinnest: lens.thinnest },
    beyondRimMm: lens.beyondRimMm,
    massG: lens.massG,
    decentrationMm: { in: round2(nasalSign(eye.eye) * reference.xMm), up: round2(reference.yMm) },
    blank: { kind, neededMm, usedMm, spareMm },
    estimate: lens.estimate,
  };
}

function powerAnswer(power: SpheroCylinder, prism: PrismVector, addD: number): PowerAnswer {
  const { sphereD, cylinderD, axisDeg } = toMinusCylinder(power);
  const { amount, baseDeg } = prismToPolar(addPrisms(prism));
  return {
    sphere: round2(sphereD),
    cylinder: round2(cylinderD),
    axis: axisDeg,
    prism: round2(amount) === 0 ? null : { amount: round2(amount), baseDeg: round2(baseDeg) },
    add: addD === 0 ? null : addD,
  };
}
