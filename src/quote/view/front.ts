/**
 * The pair from the front: what the layout of both lenses is drawn from. Each eye's places are mm from its own boxed
 * centre, y up; `centreXMm` puts that centre in the pair, the right eye on the viewer's left.
 */
import { nasalSign, type PolarPrism, prismToPolar } from '../../optics/prismBase.ts';
import { readingZone } from '../../optics/readingZone.ts';
import { segmentLeft } from '../../optics/segment.ts';
import type { Eye, PointMm } from '../../optics/types.ts';
import { READING_ZONE } from '../../rules/readingZoneCut.ts';
import { round1, round2 } from '../../rules/round.ts';
import type { BlankSituation, EyeSituation, Situation } from '../../rules/situation.ts';
import { type FlatPoints, outlineFlat, rounded } from './points.ts';

/** Corridor of a progressive or office lens and the zone to read in below it. */
export interface CorridorView {
  readonly from: PointMm;
  readonly to: PointMm;
  readonly zoneWidthMm: number;
  readonly zoneHeightMm: number;
  /** Share of the zone that is left after cutting, percent. */
  readonly leftPercent: number;
}

export interface SegmentView {
  /** Middle of its top. */
  readonly top: PointMm;
  readonly widthMm: number;
  readonly centreBelowTopMm: number;
  readonly leftPercent: number;
}

export interface EyeFront {
  readonly eye: Eye;
  readonly centreXMm: number;
  readonly outline: FlatPoints;
  /** Monocular distance that the lens is centred for, mm; null: not known. */
  readonly pdMm: number | null;
  /** Middle of the pupil, where PD and height were measured; null elsewhere. */
  readonly pupil: PointMm | null;
  /** Height of the pupil above the lowest boxed tangent, mm. */
  readonly heightMm: number | null;
  readonly reference: PointMm | null;
  readonly cross: PointMm | null;
  readonly corridor: CorridorView | null;
  readonly segment: SegmentView | null;
  readonly blank: BlankSituation | null;
  /** Prism as prescribed; null: none. */
  readonly prism: PolarPrism | null;
}

export interface FrontView {
  readonly aMm: number;
  readonly bMm: number;
  readonly dblMm: number;
  /** What the reference points are: optical centres, or the prism reference points of a multifocal design. */
  readonly referenceIs: 'optical-centre' | 'prism-reference';
  /** What the PDs are for. */
  readonly pdIs: 'distance' | 'near' | 'none';
  /** Kept free along the rim of a blank for edging, mm of its radius. */
  readonly blankMarginMm: number;
  readonly right: EyeFront;
  readonly left: EyeFront;
}

/** The pair of a situation from the front. */
export function frontView(situation: Situation): FrontView {
  const { frame, design, use, habits } = situation;
  const centreXMm = (frame.aMm + frame.dblMm) / 2;
  return {
    aMm: frame.aMm,
    bMm: frame.bMm,
    dblMm: frame.dblMm,
    referenceIs: design.corridor === null ? 'optical-centre' : 'prism-reference',
    pdIs: use === 'none' ? 'none' : use === 'near' ? 'near' : 'distance',
    blankMarginMm: habits.blankAllowanceMm / 2,
    right: eyeFront(situation, situation.right, -centreXMm),
    left: eyeFront(situation, situation.left, centreXMm),
  };
}

function eyeFront(situation: Situation, lens: EyeSituation, centreXMm: number): EyeFront {
  const { eye, pdMm, fittingHeightMm, reference, cross, prescribed } = lens;
  const none = situation.use === 'none';
  const xMm = pdMm === null ? null : nasalSign(eye) * (Math.abs(centreXMm) - pdMm);
  const pupil =
    none || xMm === null || fittingHeightMm === null
      ? null
      : { xMm, yMm: fittingHeightMm - situation.frame.bMm / 2 };
  const prism = prismToPolar(prescribed.prism);
  return {
    eye,
    centreXMm: round2(centreXMm),
    outline: outlineFlat(lens.outline),
    pdMm: none ? null : pdMm,
    pupil: pupil && rounded(pupil),
    heightMm: none ? null : fittingHeightMm,
    reference: reference && rounded(reference),
    cross: cross && rounded(cross),
    corridor: corridorView(situation, lens),
    segment: segmentView(situation, lens),
    blank: lens.lens && { ...lens.lens.blank, middle: rounded(lens.lens.blank.middle) },
    prism:
      none || prism.amount < 0.005
        ? null
        : { amount: round2(prism.amount), baseDeg: round1(prism.baseDeg) % 360 },
  };
}

function corridorView({ design }: Situation, lens: EyeSituation): CorridorView | null {
  const { eye, outline, cross, nearInsetMm } = lens;
  if (design.corridor === null || cross === null) return null;
  const insetXMm = nasalSign(eye) * nearInsetMm;
  const zone = readingZone({
    outline,
    cross,
    corridorMm: design.corridor.lengthMm,
    insetXMm,
    ...READING_ZONE,
  });
  const leftPercent = Math.round(zone.share * 100);
  return { from: rounded(cross), to: rounded(zone.corridorEnd), ...READING_ZONE, leftPercent };
}

function segmentView({ design }: Situation, lens: EyeSituation): SegmentView | null {
  const { eye, outline, reference, nearInsetMm } = lens;
  const { segment } = design;
  if (segment === null || reference === null) return null;
  const top = {
    xMm: reference.xMm + nasalSign(eye) * nearInsetMm,
    yMm: reference.yMm - segment.blankDropMm,
  };
  const { widthMm, centreBelowTopMm } = segment;
  const leftPercent = Math.round(segmentLeft(outline, segment, top).share * 100);
  return { top: rounded(top), widthMm, centreBelowTopMm, leftPercent };
}
