/** Packages side by side: each judged and priced by itself, on the same day and the same terms. */
import type { Offer } from '../../catalogue/catalogue.ts';
import type { PriceAnswer } from '../../quote/answer.ts';
import { judgePair } from '../../quote/judgePair.ts';
import { quote } from '../../quote/quote.ts';
import { lensFaces, lensLightPercent } from '../../rules/lensLight.ts';
import { round1, round2 } from '../../rules/round.ts';
import { sharpAngles } from '../../rules/sharpAngle.ts';
import type { Situation } from '../../rules/situation.ts';
import type { Entries } from '../fields.ts';
import { belongsToFrame, type Field } from '../fields.ts';
import type { NotHad } from '../keeping/offered.ts';
import { type HeldPair, privatePart } from '../keeping/parts.ts';
import { orderTerms } from '../orderTerms.ts';
import type { ShopData } from '../shopData.ts';
import { type Standing, standingOf } from '../standing.ts';
import type { FrameOf } from './answerBasket.ts';
import { type PairNames, readPair } from './readPair.ts';

/** Figures of both lenses; null where no lens could be computed, or the figure does not exist for it. */
export interface PackageFigures {
  /** The thicker lens, mm. */
  readonly thickestMm: number | null;
  readonly beyondRimMm: number | null;
  readonly centreMm: number | null;
  /** Both lenses, g. */
  readonly massG: number | null;
  /** The narrowest direction of both lenses, degrees; single vision only. */
  readonly sharpDeg: number | null;
  /** Light let through in each declared state, percent, from least to most. */
  readonly lightPercents: readonly number[];
  /** Light that the two faces of a lens reflect together, percent; null for a mirror. */
  readonly reflectedPercent: number | null;
}

export interface ComparedPackage {
  readonly names: PairNames;
  readonly standing: Standing;
  readonly notHad: readonly NotHad[];
  readonly figures: PackageFigures;
  /** null: the terms have no price. */
  readonly price: PriceAnswer | null;
}

export interface Comparison {
  /** null where the shop no longer has the frame. */
  readonly packages: readonly (ComparedPackage | null)[];
  /** Prescription and what is measured of the face differ, so the figures tell of different eyes. */
  readonly differentEyes: boolean;
}

/** Packages compared on a civil date, on the terms of one order. */
export function answerComparison(
  pairs: readonly HeldPair[],
  terms: Entries,
  frameOf: FrameOf,
  data: ShopData,
  date: string,
): Comparison {
  return {
    packages: pairs.map((pair) => compared(pair, terms, frameOf, data, date)),
    differentEyes: new Set(pairs.map(eyesOf)).size > 1,
  };
}

/** What is typed of the wearer whatever the frame. */
function eyesOf({ entries }: HeldPair): string {
  const own = Object.entries(privatePart(entries)).filter(([field]) => !belongsToFrame(field as Field));
  return JSON.stringify(own.sort());
}

function compared(
  pair: HeldPair,
  terms: Entries,
  frameOf: FrameOf,
  data: ShopData,
  date: string,
): ComparedPackage | null {
  const frame = frameOf(pair.frame);
  if (frame === null) return null;
  const { names, request, faults, notHad } = readPair(pair, frame, data, date);
  const offer: Offer = { ...data, frames: [frame] };
  const priced = quote(offer, { date, ...orderTerms(terms), pairs: [request] });
  const judged = priced.ok ? priced : quote(offer, { date, pairs: [request] });
  const situation = judgePair(offer, date, request, 'pairs.0', [])?.situation;
  if (!judged.ok || situation === undefined) throw new Error('A package that was set aside has no answer.');
  return {
    names,
    notHad,
    standing: standingOf(faults, judged.answer),
    figures: figuresOf(situation),
    price: priced.ok ? priced.answer.price : null,
  };
}

function figuresOf(situation: Situation): PackageFigures {
  const { right, left, material, tint, coating } = situation;
  const lenses = [right.lens, left.lens].filter((lens) => lens !== null);
  const whole = lenses.length === 2;
  const most = (of: (lens: (typeof lenses)[number]) => number) =>
    whole ? Math.max(...lenses.map(of)) : null;
  const { front, back } = lensFaces(material, coating);
  const states = tint === null || tint.states.length === 0 ? [{ transmittance: 1 }] : tint.states;
  return {
    thickestMm: most(({ thickest }) => thickest.mm),
    beyondRimMm: most(({ beyondRimMm }) => beyondRimMm),
    centreMm: most(({ centreThicknessMm }) => centreThicknessMm),
    massG: whole ? round1(lenses.reduce((sum, { massG }) => sum + massG, 0)) : null,
    sharpDeg: sharpAngles(situation)?.leastDeg ?? null,
    lightPercents: states
      .map((state) => lensLightPercent(state, material, coating))
      .sort((one, other) => one - other),
    reflectedPercent: tint?.mirrored ? null : round2((front + back) * 100),
  };
}
