/** One lens of a judged pair with all that the sheets tell of it: powers, prism, places and its edge all round. */
import { outlinePoint } from '../optics/outline.ts';
import { addPrisms, NO_PRISM } from '../optics/prism.ts';
import { nasalSign } from '../optics/prismBase.ts';
import type { BackSurface, Eye, Outline, PointMm, PrismVector, SpheroCylinder } from '../optics/types.ts';
import type { JudgedPair } from '../quote/judgePair.ts';
import { lensAt } from '../quote/view/thickness.ts';
import type { EyeSituation, LensSituation, Situation } from '../rules/situation.ts';

/** Power at the reference point, prism there and add; D and prism dioptres. */
export interface LensPower {
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
  /** 0 where the lens has none. */
  readonly addD: number;
}

/** Edge thickness and depth of the front, one for each radius of the outline, mm. */
export interface EdgeAllRound {
  readonly edgeMm: readonly number[];
  readonly frontMm: readonly number[];
  readonly radiiMm: readonly number[];
}

export interface WorkedLens {
  readonly eye: Eye;
  /** What the wearer is to get in this use, as prescribed. */
  readonly prescribed: LensPower;
  /** What is ordered for it; the same where nothing is compensated. */
  readonly ordered: LensPower;
  readonly compensated: boolean;
  /** Thinning prism of the design, base down; it comes on top of the ordered prism. */
  readonly thinning: PrismVector;
  /** Ordered and thinning prism together: what is ground at the reference point. */
  readonly ground: PrismVector;
  readonly lens: LensSituation;
  readonly back: BackSurface;
  readonly outline: Outline;
  /** Optical centre or prism reference point, from the boxed centre. */
  readonly reference: PointMm;
  /** Fitting cross of a progressive or office design. */
  readonly cross: PointMm | null;
  /** Middle of the top of a segment. */
  readonly segmentTop: PointMm | null;
  /** Distance from the middle of the bridge that the lens is centred for, mm. */
  readonly pdMm: number;
  /** Of the near zone or segment, mm. */
  readonly nearPdMm: number | null;
  readonly edge: EdgeAllRound;
}

/** The lens of one eye; null where none can be cut (the findings say why). */
export function workedLens({ situation }: JudgedPair, eye: Eye): WorkedLens | null {
  const own = situation[eye];
  const { lens, ordered, reference, pdMm } = own;
  if (lens === null || ordered === null || reference === null || pdMm === null) return null;
  const addD = own.orderedAddD;
  const none = situation.use === 'none';
  const prescribed = { power: ordered, prism: none ? NO_PRISM : own.prescribed.prism, addD };
  const { power, prism } = own.compensated ?? prescribed;
  const toOrder = { power, prism, addD };
  const thinning = { x: 0, y: 0 - (situation.design.corridor?.thinningPrismShare ?? 0) * addD };
  const parted = situation.design.corridor !== null || situation.design.segment !== null;
  return {
    eye,
    prescribed,
    ordered: toOrder,
    compensated: own.compensated !== null,
    thinning,
    ground: addPrisms(toOrder.prism, thinning),
    lens,
    back: lens.surfaces.back,
    outline: own.outline,
    reference,
    cross: own.cross,
    segmentTop: segmentTop(situation, own, reference),
    pdMm,
    nearPdMm: parted ? pdMm - own.nearInsetMm : null,
    edge: edgeAllRound(situation, own.outline, reference, lens),
  };
}

function segmentTop({ design }: Situation, own: EyeSituation, reference: PointMm): PointMm | null {
  if (design.segment === null) return null;
  return {
    xMm: reference.xMm + nasalSign(own.eye) * own.nearInsetMm,
    yMm: reference.yMm - design.segment.blankDropMm,
  };
}

function edgeAllRound(
  { material }: Situation,
  outline: Outline,
  reference: PointMm,
  lens: LensSituation,
): EdgeAllRound {
  const surfaces = lensAt(lens, material);
  const places = outline.radiiMm.map((_, i) => {
    const { xMm, yMm } = outlinePoint(outline, i);
    return surfaces(xMm - reference.xMm, yMm - reference.yMm);
  });
  return {
    edgeMm: places.map(({ thicknessMm }) => thicknessMm),
    frontMm: places.map(({ frontMm }) => frontMm),
    radiiMm: outline.radiiMm,
  };
}
