/** What to ask of the supplier for each lens of a pair. Powers in D, prism in prism dioptres, lengths in mm. */
import { toolReadingD } from '../optics/toolIndex.ts';
import type { Eye } from '../optics/types.ts';
import type { JudgedPair } from '../quote/judgePair.ts';
import { round2 } from '../rules/round.ts';
import { type LaidPlace, layoutPair } from './layout.ts';
import type { WorkroomOffer } from './openJob.ts';
import type { WorkedLens } from './workedLens.ts';

export interface LensOrderEye {
  readonly eye: Eye;
  readonly worked: WorkedLens;
  readonly blank: 'stock' | 'surfaced';
  /** Ready-made lenses that it is taken from; null where surfaced. */
  readonly stockId: string | null;
  readonly diameterMm: number;
  readonly leastDiameterMm: number;
  /** Middle of the blank, from the boxed centre. */
  readonly middle: LaidPlace;
  readonly baseCurveD: number;
  /** The same curve as a lens clock of index 1.530 reads it, D. */
  readonly baseCurveReadingD: number;
  /** At the reference point: computed for the outline. */
  readonly centreThicknessMm: number;
  readonly leastCentreMm: number;
  readonly leastEdgeMm: number;
}

/** Remarks, as keys of the words `workroom.remark`. */
export type Remark =
  | 'compensated'
  | 'thinning'
  | 'profile'
  | 'segment'
  | 'conic'
  | 'outline'
  | 'polarised'
  | 'shortfall'
  | 'blankShort';

export interface LensOrder {
  readonly right: LensOrderEye | null;
  readonly left: LensOrderEye | null;
  readonly remarks: readonly Remark[];
}

/** The lens order of a judged pair. */
export function lensOrder(judged: JudgedPair, offer: WorkroomOffer): LensOrder {
  const layout = layoutPair(judged, offer.workroom);
  const eye = (which: Eye) => layout[which] && orderEye(judged, layout[which].worked);
  const right = eye('right');
  const left = eye('left');
  return { right, left, remarks: remarksOn(judged, [right, left]) };
}

function orderEye({ situation }: JudgedPair, worked: WorkedLens): LensOrderEye {
  const { material, stock, frame } = situation;
  const { lens, eye } = worked;
  const { xMm, yMm } = lens.blank.middle;
  const { centre, edge, groove } = material.leastMm;
  const upMm = round2(yMm);
  return {
    eye,
    worked,
    blank: lens.blank.kind,
    stockId: lens.blank.kind === 'stock' ? (stock?.id ?? null) : null,
    diameterMm: lens.blank.usedMm,
    leastDiameterMm: lens.blank.neededMm,
    middle: { inMm: round2(eye === 'right' ? xMm : -xMm), upMm, heightMm: round2(upMm + frame.bMm / 2) },
    baseCurveD: lens.baseCurveD,
    baseCurveReadingD: round2(toolReadingD(lens.baseCurveD, material.ne)),
    centreThicknessMm: lens.centreThicknessMm,
    leastCentreMm: centre,
    leastEdgeMm: frame.mounting === 'grooved' ? (groove ?? edge) : edge,
  };
}

function remarksOn({ situation }: JudgedPair, eyes: readonly (LensOrderEye | null)[]): Remark[] {
  const some = (test: (worked: WorkedLens) => boolean) =>
    eyes.some((eye) => eye !== null && test(eye.worked));
  const remarks: [Remark, boolean][] = [
    ['compensated', some(({ compensated }) => compensated)],
    ['thinning', some(({ thinning }) => Math.abs(thinning.y) >= 0.005)],
    ['profile', some(({ lens }) => lens.estimate === 'profile')],
    ['segment', some(({ lens }) => lens.estimate === 'segment')],
    ['conic', some(({ lens }) => !lens.conicKnown)],
    ['outline', situation.frame.outlineOrigin === 'fitted'],
    ['polarised', situation.tint?.polarised ?? false],
    ['shortfall', some(({ lens }) => lens.shortfalls.length > 0)],
    ['blankShort', some(({ lens }) => lens.blank.spareMm < 0)],
  ];
  return remarks.filter(([, holds]) => holds).map(([remark]) => remark);
}
