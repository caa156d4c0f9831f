/** What the bench needs to lay out and cut a pair: boxing, decentration, heights, edge form. mm and degrees. */
import type { EdgingNote, Workroom } from '../catalogue/workroom.ts';
import { grooveShoulder } from '../optics/groove.ts';
import { box } from '../optics/outline.ts';
import { nasalSign } from '../optics/prismBase.ts';
import type { Eye, PointMm } from '../optics/types.ts';
import type { JudgedPair } from '../quote/judgePair.ts';
import { holesOf } from '../quote/lensJob.ts';
import { lensAt } from '../quote/view/thickness.ts';
import { round2 } from '../rules/round.ts';
import { type BevelPosition, bevelPosition } from './bevelPosition.ts';
import { inAndUp } from './figures.ts';
import { type FinishedSize, finishedSize } from './finishedSize.ts';
import { type WorkedLens, workedLens } from './workedLens.ts';

/** A place on the lens as the bench marks it. */
export interface LaidPlace {
  readonly inMm: number;
  /** From the datum, the horizontal line through the boxed centre; up is positive. */
  readonly upMm: number;
  /** From the lowest boxed tangent. */
  readonly heightMm: number;
}

export interface LaidHole extends LaidPlace {
  readonly side: 'nasal' | 'temporal';
  readonly fromBoxMm: number;
  readonly diameterMm: number;
  readonly thicknessMm: number;
}

/** How the edge is held. */
export type EdgeForm =
  | { readonly kind: 'bevel'; readonly position: BevelPosition | null }
  | {
      readonly kind: 'groove';
      readonly shareFromFront: number;
      readonly leastShoulderMm: number;
      readonly atDeg: number;
      readonly missingMm: number;
    }
  | { readonly kind: 'drill'; readonly holes: readonly LaidHole[] };

export interface EyeLayout {
  readonly worked: WorkedLens;
  readonly reference: LaidPlace;
  readonly cross: LaidPlace | null;
  readonly segment: LaidPlace | null;
  readonly size: FinishedSize;
  readonly edge: EdgeForm;
}

export interface PairLayout {
  readonly aMm: number;
  readonly bMm: number;
  readonly edMm: number;
  readonly dblMm: number;
  readonly framePdMm: number;
  /** Null where no lens can be cut. */
  readonly right: EyeLayout | null;
  readonly left: EyeLayout | null;
  readonly note: EdgingNote | null;
}

/** The layout of a judged pair. */
export function layoutPair(judged: JudgedPair, workroom: Workroom): PairLayout {
  const { frame, material } = judged.situation;
  return {
    aMm: frame.aMm,
    bMm: frame.bMm,
    edMm: round2(box(judged.resolved.frame.right).edMm),
    dblMm: frame.dblMm,
    framePdMm: round2(frame.aMm + frame.dblMm),
    right: layoutEye(judged, 'right', workroom),
    left: layoutEye(judged, 'left', workroom),
    note: workroom.edging.find(({ materials }) => materials.includes(material.id)) ?? null,
  };
}

function layoutEye(judged: JudgedPair, eye: Eye, workroom: Workroom): EyeLayout | null {
  const worked = workedLens(judged, eye);
  if (worked === null) return null;
  const { frame } = judged.situation;
  const place = (point: PointMm): LaidPlace => laid(eye, point, frame.bMm);
  return {
    worked,
    reference: place(worked.reference),
    cross: worked.cross && place(worked.cross),
    segment: worked.segmentTop && place(worked.segmentTop),
    size: finishedSize(worked.outline, workroom.cut.addedToCircumferenceMm[frame.mounting]),
    edge: edgeForm(judged, worked, workroom),
  };
}

function laid(eye: Eye, point: PointMm, bMm: number): LaidPlace {
  const { inMm, upMm } = inAndUp(eye, point);
  return { inMm, upMm, heightMm: round2(upMm + bMm / 2) };
}

function edgeForm(judged: JudgedPair, worked: WorkedLens, { cut }: Workroom): EdgeForm {
  const { frame } = judged.situation;
  switch (frame.mounting) {
    case 'full':
      return {
        kind: 'bevel',
        position: bevelPosition(worked.edge, cut, frame.rimDepthMm, frame.frameCurveD),
      };
    case 'grooved': {
      const shareFromFront = 0.5;
      const groove = { widthMm: cut.grooveWidthMm, shareFromFront, leastShoulderMm: cut.grooveShoulderMm };
      const { leastMm, atDeg, missingMm } = grooveShoulder(worked.edge.edgeMm, groove);
      return { kind: 'groove', shareFromFront, leastShoulderMm: round2(leastMm), atDeg, missingMm };
    }
    case 'drilled':
      return { kind: 'drill', holes: laidHoles(judged, worked) };
  }
}

function laidHoles({ resolved, situation }: JudgedPair, worked: WorkedLens): LaidHole[] {
  const { eye, reference, lens } = worked;
  const { aMm, bMm } = situation.frame;
  const surfaces = lensAt(lens, situation.material);
  return holesOf(resolved.frame, eye).map(({ xMm, yMm, diameterMm }) => ({
    ...laid(eye, { xMm, yMm }, bMm),
    side: nasalSign(eye) * xMm > 0 ? 'nasal' : 'temporal',
    fromBoxMm: round2(aMm / 2 - Math.abs(xMm)),
    diameterMm,
    thicknessMm: round2(surfaces(xMm - reference.xMm, yMm - reference.yMm).thicknessMm),
  }));
}
