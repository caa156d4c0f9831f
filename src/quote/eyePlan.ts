/** What is known of one eye's lens before it is made: power, place, and the power to order instead. */
import type { ShopHabits } from '../catalogue/shop.ts';
import { sphericalEquivalentD } from '../optics/prescription.ts';
import { NO_PRISM } from '../optics/prism.ts';
import type { Eye, PrismVector } from '../optics/types.ts';
import type { EyePrescription, EyeSituation } from '../rules/situation.ts';
import { atFit, compensate, type WearingPosition } from './asWorn.ts';
import type { FrameShape, LensJob } from './lensJob.ts';
import { opticalTiltDeg, placeLens } from './placement.ts';
import { orderedPower } from './prescribed.ts';
import type { PairRequest } from './request.ts';
import type { ResolvedLenses } from './resolvedLenses.ts';

/** Everything of one eye that is known before a lens is made; no job while a power or a measurement is missing. */
export interface EyePlan extends Omit<EyeSituation, 'lens' | 'refusal'> {
  readonly job: LensJob | null;
}

/** The pair that an eye belongs to. */
export interface PlanContext {
  readonly habits: ShopHabits;
  readonly request: PairRequest;
  readonly frame: FrameShape;
  readonly lenses: ResolvedLenses;
}

/** How the lens of an eye is worn. */
export function wearingPosition(eye: Eye, { habits, request, frame }: PlanContext): WearingPosition {
  return {
    eye,
    faceFormDeg: request.fit?.faceForm ?? frame.situation.faceFormDeg,
    pantoscopicTiltDeg: opticalTiltDeg(request.fit ?? {}, habits),
    testedVertexMm: request.prescription?.vertexDistance ?? null,
    wornVertexMm: request.fit?.vertexDistance ?? null,
  };
}

/** The plan of an eye. `wrap` is the prism that the wrapped lens itself adds, to be taken off. */
export function planEye(
  eye: Eye,
  own: EyePrescription,
  other: EyePrescription,
  context: PlanContext,
  wrap: PrismVector,
): EyePlan {
  const { habits, request, frame, lenses } = context;
  const { use } = request.lenses;
  const fit = request.fit ?? {};
  const { design, material } = lenses;
  const { power, addD } = orderedPower(own, other, use, design, habits);
  const prism = use === 'none' ? NO_PRISM : own.prism;
  const position = wearingPosition(eye, context);
  const changed = power && compensate({ power, prism }, design, material.ne, position, habits, wrap);
  const distanceD = power === null ? 0 : sphericalEquivalentD(power);
  const placed = placeLens(eye, frame.situation, fit, { use, design }, distanceD, habits);
  const outline = frame[eye];
  const { reference, cross, nearInsetMm } = placed;
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
          nearInsetMm,
        };
  return {
    eye,
    prescribed: own,
    ordered: power,
    intended: power && atFit(power, position),
    compensated: changed,
    orderedAddD: addD,
    outline,
    ...placed,
    job,
  };
}
