/** One lens cut from a blank: what optics/finishedLens computes, with the material's limits, rounded as shown. */
import { chooseBlank } from '../optics/blank.ts';
import { type FinishedLens, finishLens } from '../optics/finishedLens.ts';
import type { HoleLimit, LensRefusal as OpticsRefusal } from '../optics/lensToMake.ts';
import type { PowerProfile } from '../optics/powerProfile.ts';
import { nasalSign } from '../optics/prismBase.ts';
import { movedCentre } from '../optics/surfacedBlank.ts';
import type { PointMm, PrismVector } from '../optics/types.ts';
import { round1, round2 } from '../rules/round.ts';
import type { BlankSituation, LensRefusal, LensSituation } from '../rules/situation.ts';
import { holesOf, type LensJob, type MadeLens, type PairJob } from './lensJob.ts';

/** The blank that a lens is cut from. */
export interface BlankToCut {
  readonly kind: 'stock' | 'surfaced';
  /** True power of its front, D. */
  readonly baseCurveD: number;
  /** null: not known, taken as spherical. */
  readonly conic: number | null;
  /** Of a stock lens; null: as thin as the limits allow. */
  readonly centreThicknessMm: number | null;
  readonly diametersMm: readonly number[];
}

/** The lens, or why it cannot be. */
export function makeLens(pair: PairJob, lens: LensJob, blank: BlankToCut): MadeLens {
  const cover = coverOf(pair, lens, blank);
  const profile = profileOf(pair, lens);
  const finished = finishLens({
    power: lens.power,
    prism: groundPrism(pair, lens),
    index: pair.material.ne,
    densityGPerCm3: pair.material.densityGPerCm3,
    frontPowerD: blank.baseCurveD,
    frontConic: blank.conic ?? 0,
    outline: lens.outline,
    reference: lens.reference,
    limits: limitsOf(pair, lens),
    fixedCentreThicknessMm: blank.centreThicknessMm,
    profile,
  });
  if (cover === null) return { lens: null, refusal: { reason: 'no-blanks', figures: {} } };
  return finished.ok
    ? { lens: shown(pair, finished.lens, blank, cover, profile), refusal: null }
    : { lens: null, refusal: refusalOf(finished) };
}

/** What the optics refuse, in the words that a rule has sentences for. */
function refusalOf(refused: OpticsRefusal): LensRefusal {
  switch (refused.reason) {
    case 'front-does-not-reach':
    case 'back-does-not-reach':
      return {
        reason: 'surface-too-small',
        figures: { reachMm: round2(refused.reachMm), neededMm: round2(refused.neededMm) },
      };
    case 'surfaces-cross':
      return {
        reason: 'surfaces-cross',
        figures: { missingMm: round2(-refused.thinnestMm), atDeg: Math.round(refused.atDeg) % 360 },
      };
    default:
      return { reason: 'out-of-range', figures: { field: refused.field, found: String(refused.found) } };
  }
}

/** Ordered prism with the design's thinning prism, base down in both eyes. */
function groundPrism({ design }: PairJob, { prism, addD }: LensJob): PrismVector {
  const thinning = (design.corridor?.thinningPrismShare ?? 0) * addD;
  return { x: prism.x, y: prism.y - thinning };
}

function limitsOf(pair: PairJob, lens: LensJob) {
  const { centre, edge, groove, hole } = pair.material.leastMm;
  const grooved = pair.frame.situation.mounting === 'grooved';
  const holes: HoleLimit[] = holesOf(pair.frame, lens.eye).map((place) => ({
    ...place,
    leastMm: hole ?? edge,
  }));
  return { centreMm: centre, edgeMm: grooved ? (groove ?? edge) : edge, holes };
}

/** Power profile of a progressive or office design on its front, heights from the reference point. */
function profileOf({ design }: PairJob, { addD, eye, nearInsetMm }: LensJob): PowerProfile | null {
  const { corridor } = design;
  if (corridor === null || addD === 0) return null;
  const startYMm = corridor.referenceBelowCrossMm;
  return {
    addD: addD * (1 - corridor.addShareAtCross),
    startYMm,
    endYMm: startYMm - corridor.lengthMm,
    insetXMm: nasalSign(eye) * nearInsetMm,
    surface: 'front',
  };
}

function coverOf(pair: PairJob, lens: LensJob, { kind, diametersMm }: BlankToCut): BlankSituation | null {
  const { outline, reference } = lens;
  const allowanceMm = pair.habits.blankAllowanceMm;
  const offset = kind === 'surfaced' ? offsetOf(pair, lens) : { xMm: 0, yMm: 0 };
  const cover = chooseBlank({ outline, reference, offset, allowanceMm }, diametersMm);
  if (cover === null) return null;
  const neededMm = round2(cover.neededMm);
  return {
    kind,
    neededMm,
    usedMm: cover.usedMm,
    spareMm: round2((cover.usedMm - neededMm) / 2),
    closestAtDeg: Math.round(cover.closestAtDeg) % 360,
    middle: { xMm: reference.xMm - offset.xMm, yMm: reference.yMm - offset.yMm },
  };
}

/**
 * Where the reference point lies from the middle of a surfaced blank: a progressive has it from its maker, a segment
 * its own place, and the optical centre of single vision is moved as far as the laboratory allows.
 */
function offsetOf({ material, design }: PairJob, { eye, outline, reference }: LensJob): PointMm {
  const surfaced = material.surfaced;
  if (surfaced === null) return { xMm: 0, yMm: 0 };
  const nasal = nasalSign(eye);
  if (design.segment !== null) return { xMm: nasal * design.segment.blankInsetMm, yMm: 0 };
  if (design.corridor !== null) return { xMm: nasal * surfaced.referenceInMm, yMm: surfaced.referenceUpMm };
  return movedCentre(outline, reference, surfaced.mostMoveMm);
}

function shown(
  pair: PairJob,
  lens: FinishedLens,
  blank: BlankToCut,
  cover: BlankSituation,
  profile: PowerProfile | null,
): LensSituation {
  const thickestMm = round2(lens.thickest.mm);
  return {
    baseCurveD: blank.baseCurveD,
    conicKnown: blank.conic !== null,
    centreThicknessMm: round2(lens.centreThicknessMm),
    governedBy: lens.governedBy,
    thickest: { mm: thickestMm, atDeg: Math.round(lens.thickest.atDeg) % 360 },
    thinnest: { mm: round2(lens.thinnest.mm), atDeg: Math.round(lens.thinnest.atDeg) % 360 },
    beyondRimMm: Math.max(0, round2(thickestMm - pair.frame.situation.rimDepthMm)),
    massG: round1(lens.massG),
    blank: cover,
    surfaces: { front: lens.front, back: lens.back, centreThicknessMm: lens.centreThicknessMm, profile },
    shortfalls: lens.shortfalls
      .map(({ at, missingMm, atDeg }) => ({ at, missingMm: round2(missingMm), atDeg: Math.round(atDeg) }))
      .filter(({ missingMm }) => missingMm > 0),
    estimate: pair.design.segment !== null ? 'segment' : pair.design.corridor !== null ? 'profile' : null,
  };
}
