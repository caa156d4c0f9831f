/** What a lens does to light: each declared state of its tint, and what its faces reflect with and without coating. */
import type { Coating } from '../../catalogue/coating.ts';
import { toSrgb } from '../../optics/lensColour.ts';
import { type TintCategory, tintCategory } from '../../optics/tint.ts';
import { lensFaces, lensLightPercent } from '../../rules/lensLight.ts';
import { round2 } from '../../rules/round.ts';
import type { Situation } from '../../rules/situation.ts';
import { type FlatPoints, outlineFlat } from './points.ts';

/** A lens as it looks in one declared state. */
export interface LightState {
  /** As the shop wrote it; empty where no tint was chosen. */
  readonly name: string;
  /** sRGB at the top and at the foot of the lens: the same unless the tint is a gradient. */
  readonly top: string;
  readonly foot: string;
  /** Light let through by the finished lens at the top and at the foot, percent to 0.1. */
  readonly percents: readonly number[];
  readonly category: TintCategory;
}

/** Light that a lens reflects to somebody in front of it. */
export interface Reflections {
  /** Of the light that meets the lens, percent to 0.01: from its front, and from its back through the lens. */
  readonly frontPercent: number;
  readonly backPercent: number;
  /** Greys of a white window seen in each face. */
  readonly frontGrey: string;
  readonly backGrey: string;
}

export interface LightView {
  /** The right lens, mm from its boxed centre. */
  readonly outline: FlatPoints;
  readonly bMm: number;
  readonly states: readonly LightState[];
  readonly mirrored: boolean;
  readonly polarised: boolean;
  readonly photochromic: boolean;
  /** null: a mirror, whose reflectance is not declared. */
  readonly bare: Reflections | null;
  /** null: the coating leaves the reflections as they are, or there is none. */
  readonly coated: Reflections | null;
  readonly coating: string | null;
}

const CLEAR = { name: '', transmittance: 1, colour: '#ffffff' };

/** Tint and reflections of a situation's lenses. */
export function lightView(situation: Situation): LightView {
  const { tint, material, coating, right, frame } = situation;
  const declared = tint === null || tint.states.length === 0 ? [CLEAR] : tint.states;
  const groups = tint?.kind === 'gradient' ? [declared] : declared.map((state) => [state]);
  const lightest = Math.max(...declared.map(({ transmittance }) => transmittance));
  const mirrored = tint?.mirrored ?? false;
  const reflected = (chosen: Coating | null) => reflections(lensFaces(material, chosen), lightest);
  const quiet = coating !== null && coating.faces !== 'none' && coating.residualReflectance !== null;
  return {
    outline: outlineFlat(right.outline),
    bMm: frame.bMm,
    states: groups.map((states) => lightState(states, situation)),
    mirrored,
    polarised: tint?.polarised ?? false,
    photochromic: tint?.kind === 'photochromic',
    bare: mirrored ? null : reflected(null),
    coated: quiet && !mirrored ? reflected(coating) : null,
    coating: coating?.name ?? null,
  };
}

type Declared = Pick<typeof CLEAR, 'name' | 'transmittance' | 'colour'>;

function lightState(states: readonly Declared[], { material, coating }: Situation): LightState {
  const percents = states.map((state) => lensLightPercent(state, material, coating));
  const first = states[0] ?? CLEAR;
  return {
    name: states.map(({ name }) => name).join(', '),
    top: first.colour,
    foot: (states.at(-1) ?? first).colour,
    percents,
    category: tintCategory(Math.min(...percents) / 100),
  };
}

function reflections(
  faces: { readonly front: number; readonly back: number },
  internal: number,
): Reflections {
  const seenBack = (1 - faces.front) ** 2 * internal ** 2 * faces.back;
  return {
    frontPercent: round2(faces.front * 100),
    backPercent: round2(seenBack * 100),
    frontGrey: grey(faces.front),
    backGrey: grey(seenBack),
  };
}

/** The grey of a screen that is this share as bright as its white (D65). */
function grey(share: number): string {
  const { green } = toSrgb({ x: 0.95047 * share, y: share, z: 1.08883 * share });
  const pair = green.toString(16).padStart(2, '0');
  return `#${pair}${pair}${pair}`;
}
