/**
 * The section of each lens through its reference point and its thickest edge, in its rim. Heights along the meridian
 * are mm from the reference point, positive towards the thickest edge; depths are mm behind the front's vertex.
 */
import type { MountingKind } from '../../catalogue/frame.ts';
import { fullTurnDeg, toDegrees } from '../../optics/angle.ts';
import { bevelWidthMm } from '../../optics/bevel.ts';
import { radiusAt } from '../../optics/outline.ts';
import type { Eye } from '../../optics/types.ts';
import { round2 } from '../../rules/round.ts';
import type { EyeSituation, LensSituation, Situation } from '../../rules/situation.ts';
import { meridianChord } from './meridian.ts';
import { lensAt } from './thickness.ts';

/** One end of a section: where on the meridian, how thick, and how deep its front lies. */
export interface SectionEnd {
  readonly sMm: number;
  readonly mm: number;
  readonly frontMm: number;
  /** Its direction from the boxed centre, degrees of the front view. */
  readonly atDeg: number;
}

/** A lens along a meridian: the same number of places, fronts and thicknesses. */
export interface LensSection {
  readonly sMm: readonly number[];
  readonly frontMm: readonly number[];
  readonly thicknessMm: readonly number[];
  readonly thick: SectionEnd;
  readonly other: SectionEnd;
  /** At the reference point. */
  readonly centreMm: number;
}

export interface EyeSection extends LensSection {
  readonly eye: Eye;
  /** Direction of the meridian towards the thickest edge, degrees of the front view. */
  readonly meridianDeg: number;
  readonly thickest: LensSituation['thickest'];
  readonly thinnest: LensSituation['thinnest'];
  readonly beyondRimMm: number;
  readonly massG: number;
  /** The same meridian of the lens compared with; null: none. */
  readonly compared:
    | (LensSection & Pick<LensSituation, 'thickest' | 'thinnest' | 'beyondRimMm' | 'massG'>)
    | null;
}

/** How the edge is held; the bevel is drawn in a usual form, since the engine decides none. */
export interface HoldView {
  readonly mounting: MountingKind;
  /** 0: no rim, or its depth is not known. */
  readonly rimDepthMm: number;
  readonly bevelHeightMm: number;
  readonly bevelWidthMm: number;
}

export interface SectionView {
  readonly hold: HoldView;
  readonly estimate: LensSituation['estimate'];
  readonly right: EyeSection;
  readonly left: EyeSection;
}

/** A bevel as most edgers cut it (common practice). */
const BEVEL = { heightMm: 0.7, angleDeg: 110 };
const STEPS = 40;

/** Sections of both lenses, over those of another package where one is given; null where a lens is missing. */
export function sectionView(situation: Situation, other: Situation | null = null): SectionView | null {
  const right = eyeSection(situation, situation.right, other);
  const left = eyeSection(situation, situation.left, other);
  if (right === null || left === null) return null;
  const { mounting, rimDepthMm } = situation.frame;
  return {
    hold: {
      mounting,
      rimDepthMm,
      bevelHeightMm: BEVEL.heightMm,
      bevelWidthMm: round2(bevelWidthMm(BEVEL)),
    },
    estimate: situation.right.lens?.estimate ?? null,
    right,
    left,
  };
}

function eyeSection(situation: Situation, own: EyeSituation, other: Situation | null): EyeSection | null {
  const { eye, lens, reference, outline } = own;
  if (lens === null || reference === null) return null;
  const at = (lens.thickest.atDeg * Math.PI) / 180;
  const radius = radiusAt(outline, lens.thickest.atDeg);
  const dx = radius * Math.cos(at) - reference.xMm;
  const dy = radius * Math.sin(at) - reference.yMm;
  const direction = Math.atan2(dy, dx);
  const section = alongMeridian(situation, own, direction);
  if (section === null) return null;
  const { thickest, thinnest, beyondRimMm, massG } = lens;
  const figures = { thickest, thinnest, beyondRimMm, massG };
  const second = other?.[eye];
  const against = other && second?.lens ? alongMeridian(other, second, direction) : null;
  return {
    eye,
    meridianDeg: Math.round(fullTurnDeg(toDegrees(direction))) % 360,
    ...section,
    ...figures,
    compared:
      against && second?.lens
        ? {
            ...against,
            thickest: second.lens.thickest,
            thinnest: second.lens.thinnest,
            beyondRimMm: second.lens.beyondRimMm,
            massG: second.lens.massG,
          }
        : null,
  };
}

function alongMeridian(situation: Situation, own: EyeSituation, direction: number): LensSection | null {
  const { lens, reference, outline } = own;
  if (lens === null || reference === null) return null;
  const reach = meridianChord(outline, reference, direction);
  if (reach === null) return null;
  const surfaces = lensAt(lens, situation.material);
  const at = (s: number) => surfaces(s * Math.cos(direction), s * Math.sin(direction));
  const end = (s: number): SectionEnd => {
    const { frontMm, thicknessMm } = at(s);
    const [x, y] = [reference.xMm + s * Math.cos(direction), reference.yMm + s * Math.sin(direction)];
    const atDeg = Math.round(fullTurnDeg(toDegrees(Math.atan2(y, x)))) % 360;
    return { sMm: round2(s), mm: round2(thicknessMm), frontMm: round2(frontMm), atDeg };
  };
  const sMm: number[] = [];
  const frontMm: number[] = [];
  const thicknessMm: number[] = [];
  for (let i = 0; i <= STEPS; i++) {
    const s = reach.from + ((reach.to - reach.from) * i) / STEPS;
    const here = at(s);
    if (Number.isNaN(here.thicknessMm)) return null;
    sMm.push(round2(s));
    frontMm.push(round2(here.frontMm));
    thicknessMm.push(round2(here.thicknessMm));
  }
  return {
    sMm,
    frontMm,
    thicknessMm,
    thick: end(reach.to),
    other: end(reach.from),
    centreMm: lens.centreThicknessMm,
  };
}
