/** What an option gains and costs beside another, apart from its price: figures of this prescription in this frame. */
import { fringesPrism } from '../rules/colourFringes.ts';
import { lensLightPercent, reflectedPercent } from '../rules/lensLight.ts';
import { round1 } from '../rules/round.ts';
import { sharpAngles } from '../rules/sharpAngle.ts';
import type { LensSituation, Situation } from '../rules/situation.ts';

export interface TradeOff {
  /** Thickest edge of both lenses, mm; null here and below where no lens could be computed. */
  readonly thickestMm: number | null;
  /** Most that is seen of an edge beyond the rim, mm. */
  readonly beyondRimMm: number | null;
  /** The thicker centre, mm. */
  readonly centreMm: number | null;
  /** Both lenses, g. */
  readonly massG: number | null;
  /** Narrowest sharp-view angle, degrees; null too where the design is not single vision. */
  readonly sharpDeg: number | null;
  /** Colour fringes at 30 degrees of gaze in the stronger lens, prism dioptres; null while no power is known. */
  readonly fringesPrism: number | null;
  /** Light that both faces throw back, percent; null: a mirror, whose reflection is not declared. */
  readonly reflectedPercent: number | null;
  /** Light that the finished lens lets through in each state of its tint, percent, as declared. */
  readonly lightPercents: readonly number[];
}

/** Finds the sharp-view angle of a situation once, however many options share its lenses. */
export type SharpDeg = (situation: Situation) => number | null;

/** A finder that keeps the angle by design, material and blanks: what tint and coating cannot change. */
export function sharpFinder(): SharpDeg {
  const known = new Map<string, number | null>();
  return (situation) => {
    const { design, material, stock, right, left } = situation;
    if (right.lens === null || left.lens === null) return null;
    const key = `${design.id} ${material.id} ${stock?.id ?? ''}`;
    let found = known.get(key);
    if (found === undefined) {
      found = sharpAngles(situation)?.leastDeg ?? null;
      known.set(key, found);
    }
    return found;
  };
}

/** The figures of a package. */
export function tradeOffOf(situation: Situation, sharpDeg: SharpDeg): TradeOff {
  const { right, left, tint, material, coating } = situation;
  const most = (of: (lens: LensSituation) => number) =>
    right.lens && left.lens && Math.max(of(right.lens), of(left.lens));
  const states = tint === null || tint.states.length === 0 ? [{ transmittance: 1 }] : tint.states;
  const { abbe } = material;
  return {
    thickestMm: most(({ thickest }) => thickest.mm),
    beyondRimMm: most(({ beyondRimMm }) => beyondRimMm),
    centreMm: most(({ centreThicknessMm }) => centreThicknessMm),
    massG: right.lens && left.lens && round1(right.lens.massG + left.lens.massG),
    sharpDeg: sharpDeg(situation),
    fringesPrism:
      right.ordered && left.ordered
        ? Math.max(fringesPrism(right.ordered, abbe), fringesPrism(left.ordered, abbe))
        : null,
    reflectedPercent: tint?.mirrored ? null : reflectedPercent(situation),
    lightPercents: states.map((state) => lensLightPercent(state, material, coating)),
  };
}
