/** A resolved pair becomes the situation that the rules look at: powers, places, lenses. */
import type { ShopHabits } from '../catalogue/shop.ts';
import { sphericalEquivalentD } from '../optics/prescription.ts';
import { NO_PRISM } from '../optics/prism.ts';
import type { Eye } from '../optics/types.ts';
import type { EyePrescription, EyeSituation, Situation } from '../rules/situation.ts';
import { compensate } from './asWorn.ts';
import type { FrameShape, LensJob, MadeLens } from './lensJob.ts';
import { type MadePair, makePair } from './makePair.ts';
import { placeLens } from './placement.ts';
import { orderedPower, readPrescription } from './prescribed.ts';
import type { PairRequest } from './request.ts';
import type { ResolvedLenses } from './resolve.ts';

/** Everything of one eye that is known before a lens is made. */
type EyePlan = Omit<EyeSituation, 'lens' | 'refusal'> & { readonly job: LensJob | null };

/** The situation of a pair on a civil date. */
export function situate(
  habits: ShopHabits,
  date: string,
  request: PairRequest,
  frame: FrameShape,
  lenses: ResolvedLenses,
): Situation {
  const { use, blank = 'auto' } = request.lenses;
  const { right, left } = readPrescription(request.prescription);
  const context = { habits, request, frame, lenses };
  const plans = {
    right: planEye('right', right, left, context),
    left: planEye('left', left, right, context),
  };
  const made = makeBoth(plans, { use, blank }, context);
  return {
    habits,
    date,
    wearer: request.wearer ?? 'adult',
    use,
    frame: { ...frame.situation, faceFormDeg: request.fit?.faceForm ?? frame.situation.faceFormDeg },
    ...lenses,
    stock: made?.stock ?? null,
    blankAsked: blank,
    hasPrescription: request.prescription !== null,
    issued: request.prescription?.issued ?? null,
    pdHalved: typeof request.fit?.pd === 'number',
    nearPdGiven: request.fit?.nearPd !== undefined,
    tiltDeg: request.fit?.pantoscopicTilt ?? habits.pantoscopicTiltDeg,
    vertexDistanceMm: request.prescription?.vertexDistance ?? null,
    right: withLens(plans.right, made?.right),
    left: withLens(plans.left, made?.left),
  };
}

interface Context {
  readonly habits: ShopHabits;
  readonly request: PairRequest;
  readonly frame: FrameShape;
  readonly lenses: ResolvedLenses;
}

function planEye(eye: Eye, own: EyePrescription, other: EyePrescription, context: Context): EyePlan {
  const { habits, request, frame, lenses } = context;
  const { use } = request.lenses;
  const fit = request.fit ?? {};
  const { design, material } = lenses;
  const { power, addD } = orderedPower(own, other, use, design, habits);
  const prism = use === 'none' ? NO_PRISM : own.prism;
  const position = {
    eye,
    faceFormDeg: fit.faceForm ?? frame.situation.faceFormDeg,
    pantoscopicTiltDeg: fit.pantoscopicTilt ?? habits.pantoscopicTiltDeg,
    testedVertexMm: request.prescription?.vertexDistance ?? null,
    wornVertexMm: fit.vertexDistance ?? null,
  };
  const changed = power && compensate({ power, prism }, design, material.ne, position, habits);
  const distanceD = power === null ? 0 : sphericalEquivalentD(power);
  const placed = placeLens(eye, frame.situation, fit, { use, design }, distanceD, habits);
  const outline = frame[eye];
  const { reference, cross } = placed;
  const job =
    power === null || reference === null
      ? null
      : {
          eye,
          power: changed?.power ?? power,
          prism: changed?.prism ?? prism,
          addD,
          outline,
          reference,
          cross,
        };
  return {
    eye,
    prescribed: own,
    ordered: power,
    compensated: changed,
    orderedAddD: addD,
    outline,
    ...placed,
    job,
  };
}

function makeBoth(
  { right, left }: { readonly right: EyePlan; readonly left: EyePlan },
  asked: { readonly use: PairRequest['lenses']['use']; readonly blank: 'stock' | 'surfaced' | 'auto' },
  { habits, frame, lenses }: Context,
): MadePair | null {
  if (right.job === null || left.job === null) return null;
  return makePair({
    ...asked,
    design: lenses.design,
    material: lenses.material,
    tint: lenses.tint?.id ?? null,
    coating: lenses.coating?.id ?? null,
    frame,
    habits,
    right: right.job,
    left: left.job,
  });
}

function withLens({ job: _, ...plan }: EyePlan, made: MadeLens | undefined): EyeSituation {
  return { ...plan, lens: made?.lens ?? null, refusal: made?.refusal ?? null };
}
