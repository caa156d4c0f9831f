/**
 * The front curve of a pair: which of the curves that a material offers. Vogel's rule, a rule of thumb (from memory,
 * Brooks & Borish), gives the wish; the rim's own curve bounds it; both eyes share one curve unless their wishes
 * are further apart than the shop allows. Powers are true surface powers in the material; rim and lens are compared as
 * a lens clock reads both (see toolIndex.ts), since rims are bent and measured so.
 */
import { sphericalEquivalentD } from './prescription.ts';
import { toolReadingD, truePowerD } from './toolIndex.ts';
import type { Eye, SpheroCylinder } from './types.ts';

/** What a base curve is chosen from. */
export interface BaseCurveQuestion {
  /** True surface powers that the material offers, D, any order. */
  readonly offeredD: readonly number[];
  readonly right: SpheroCylinder | null;
  readonly left: SpheroCylinder | null;
  /** Index of the material: what its curves read on the tool. */
  readonly index: number;
  /** Curve of the rim, D at the tool index; null where the rim follows the lens or is not known. */
  readonly frameCurveD: number | null;
  /** One curve serves both eyes while their wishes differ by no more than this, D; always where absent. */
  readonly sharedUpToD?: number;
}

/** The curve of one eye and why. */
export interface BaseCurve {
  readonly baseCurveD: number;
  /** What Vogel's rule wished, D. */
  readonly wishedD: number;
  /** Whose power the wish came from. */
  readonly ledBy: Eye;
  /**
   * `power`: the nearest offered to the wish. `frame`: the rim's curve moved the choice. `only`: one curve offered.
   * `out-of-reach`: no offered curve is within the leeway of the rim; the nearest to the rim was taken.
   */
  readonly reason: 'power' | 'frame' | 'only' | 'out-of-reach';
}

/** How far the front of a lens may be from the rim's curve, D at the tool index: common practice. */
export const FRAME_LEEWAY_D = 2;

/** A choice for each eye that has a lens, or that nothing is offered. */
export type BaseCurveAnswer =
  | { readonly ok: true; readonly right: BaseCurve | null; readonly left: BaseCurve | null }
  | { readonly ok: false; readonly reason: 'none-offered' | 'no-power' };

/** Vogel's rule: front curve in D for a spherical equivalent in D; SE + 6 for plus, SE/2 + 6 for minus. */
export function vogelCurveD(meanD: number): number {
  return meanD >= 0 ? meanD + 6 : meanD / 2 + 6;
}

/** The value nearest to `wish`; of two as near, the flatter, which makes the thinner-looking lens. */
function nearest(values: readonly number[], wish: number): number {
  return values.reduce((best, value) => {
    const gain = Math.abs(best - wish) - Math.abs(value - wish);
    return gain > 1e-9 || (gain > -1e-9 && value < best) ? value : best;
  });
}

/** The front curves of a pair, D, with their reasons; equal in both eyes unless `sharedUpToD` is passed. */
export function chooseBaseCurve(question: BaseCurveQuestion): BaseCurveAnswer {
  const offered = question.offeredD.filter(Number.isFinite);
  if (offered.length === 0) return { ok: false, reason: 'none-offered' };
  const wish = (power: SpheroCylinder | null) =>
    power ? vogelCurveD(sphericalEquivalentD(power)) : Number.NaN;
  const rightWish = wish(question.right);
  const leftWish = wish(question.left);
  if (Number.isNaN(rightWish) && Number.isNaN(leftWish)) return { ok: false, reason: 'no-power' };
  const apart = Math.abs(rightWish - leftWish) > (question.sharedUpToD ?? Number.POSITIVE_INFINITY) + 1e-9;
  // The more plus eye has the higher wish. Of one eye, or two alike, the one there is leads, right first.
  const leader: Eye = Number.isNaN(rightWish) || leftWish > rightWish ? 'left' : 'right';
  const shared = leader === 'right' ? rightWish : leftWish;
  return {
    ok: true,
    right: question.right
      ? pick(offered, apart ? rightWish : shared, apart ? 'right' : leader, question)
      : null,
    left: question.left ? pick(offered, apart ? leftWish : shared, apart ? 'left' : leader, question) : null,
  };
}

function pick(
  offered: readonly number[],
  wishedD: number,
  ledBy: Eye,
  question: BaseCurveQuestion,
): BaseCurve {
  const byPower = nearest(offered, wishedD);
  const { frameCurveD } = question;
  if (new Set(offered).size === 1) return { baseCurveD: byPower, wishedD, ledBy, reason: 'only' };
  if (frameCurveD === null) return { baseCurveD: byPower, wishedD, ledBy, reason: 'power' };
  const fitting = offered.filter(
    (curve) => Math.abs(toolReadingD(curve, question.index) - frameCurveD) <= FRAME_LEEWAY_D + 1e-9,
  );
  if (fitting.length === 0) {
    const rimD = truePowerD(frameCurveD, question.index);
    return { baseCurveD: nearest(offered, rimD), wishedD, ledBy, reason: 'out-of-reach' };
  }
  const baseCurveD = nearest(fitting, wishedD);
  return { baseCurveD, wishedD, ledBy, reason: baseCurveD === byPower ? 'power' : 'frame' };
}
