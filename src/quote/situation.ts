/** A resolved pair becomes the situation that the rules look at: powers, places, lenses. */
import type { ShopHabits } from '../catalogue/shop.ts';
import { NO_PRISM, prismAmount } from '../optics/prism.ts';
import type { PrismVector } from '../optics/types.ts';
import { wrapPrism } from '../optics/wrapPrism.ts';
import type { EyePrescription, EyeSituation, Situation } from '../rules/situation.ts';
import { isTilted } from './asWorn.ts';
import { type EyePlan, type PlanContext, planEye, wearingPosition } from './eyePlan.ts';
import type { FrameShape, MadeLens } from './lensJob.ts';
import { type MadePair, makePair } from './makePair.ts';
import { readPrescription } from './prescribed.ts';
import type { PairRequest } from './request.ts';
import type { ResolvedLenses } from './resolvedLenses.ts';

/** Prism of a wrapped lens below which nothing is ordered against it, prism dioptres. */
const LEAST_WRAP_PRISM = 0.1;

/** The situation of a pair on a civil date. */
export function situate(
  habits: ShopHabits,
  date: string,
  request: PairRequest,
  frame: FrameShape,
  lenses: ResolvedLenses,
): Situation {
  const prescribed = readPrescription(request.prescription);
  const { plans, made } = makeWorn({ habits, request, frame, lenses }, prescribed);
  return {
    habits,
    date,
    wearer: request.wearer ?? 'adult',
    use: request.lenses.use,
    frame: { ...frame.situation, faceFormDeg: request.fit?.faceForm ?? frame.situation.faceFormDeg },
    ...lenses,
    stock: made?.stock ?? null,
    blankAsked: request.lenses.blank ?? 'auto',
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

interface Both<T> {
  readonly right: T;
  readonly left: T;
}

interface Worn {
  readonly plans: Both<EyePlan>;
  readonly made: MadePair | null;
}

/**
 * The pair made, and where wrapping the lenses adds prism, made again against it: the prism of a wrapped lens is
 * known only once its curves are.
 */
function makeWorn(context: PlanContext, prescribed: Both<EyePrescription>): Worn {
  const plan = (wrap: Both<PrismVector>) => ({
    right: planEye('right', prescribed.right, prescribed.left, context, wrap.right),
    left: planEye('left', prescribed.left, prescribed.right, context, wrap.left),
  });
  const plans = plan({ right: NO_PRISM, left: NO_PRISM });
  const made = makeBoth(plans, context);
  const wrap = made && wrapOf(made, context);
  if (!wrap) return { plans, made };
  const against = plan(wrap);
  return { plans: against, made: makeBoth(against, context) };
}

/** Prism that wrapping adds to each lens; null where it does not count or is the maker's own business. */
function wrapOf(made: MadePair, context: PlanContext): Both<PrismVector> | null {
  const { design, material } = context.lenses;
  if (design.kind !== 'single-vision' || made.right.lens === null || made.left.lens === null) return null;
  const of = (eye: 'right' | 'left', { surfaces }: NonNullable<MadeLens['lens']>) => {
    const position = wearingPosition(eye, context);
    if (!isTilted(position, context.habits)) return NO_PRISM;
    return wrapPrism({ ...surfaces, index: material.ne }, position);
  };
  const wrap = { right: of('right', made.right.lens), left: of('left', made.left.lens) };
  return Math.max(prismAmount(wrap.right), prismAmount(wrap.left)) < LEAST_WRAP_PRISM ? null : wrap;
}

function makeBoth(
  { right, left }: Both<EyePlan>,
  { habits, request, frame, lenses }: PlanContext,
): MadePair | null {
  if (right.job === null || left.job === null) return null;
  // A design that is not made for the use has no lens for it, and so no figures to compare.
  if (!lenses.design.uses.includes(request.lenses.use)) return null;
  return makePair({
    use: request.lenses.use,
    blank: request.lenses.blank ?? 'auto',
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
