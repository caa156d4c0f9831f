/** A judged pair and what was measured on it, as the tolerance tables ask for them. */

import { nasalSign } from '../../optics/prismBase.ts';
import type { ComparedItems } from '../../optics/tolerance/checkPlaced.ts';
import type { InspectedLens, InspectedPair } from '../../optics/tolerance/inspect.ts';
import type { LensKind } from '../../optics/tolerance/table.ts';
import { truePowerD } from '../../optics/toolIndex.ts';
import type { PointMm, PrismVector } from '../../optics/types.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import { type WorkedLens, workedLens } from '../workedLens.ts';
import type { MeasuredLens, MeasuredPair } from './measured.ts';

/** How the tables class a design. */
function lensKindOf({ situation }: JudgedPair): LensKind {
  if (situation.design.corridor !== null) return 'progressive';
  return situation.design.segment === null ? 'single-vision' : 'multifocal';
}

/** The pair to inspect; null where a lens of it cannot be computed. */
export function pairToInspect(judged: JudgedPair, measured: MeasuredPair): InspectedPair | null {
  const right = workedLens(judged, 'right');
  const left = workedLens(judged, 'left');
  if (right === null || left === null) return null;
  return {
    kind: lensKindOf(judged),
    right: lensToInspect(judged, right, measured),
    left: lensToInspect(judged, left, measured),
    placed: pairItems(judged, right, left, measured),
  };
}

function lensToInspect(judged: JudgedPair, worked: WorkedLens, pair: MeasuredPair): InspectedLens {
  const { eye, ordered } = worked;
  const measured = pair[eye];
  const verification = pair.verification?.[eye];
  const thinning = pair.thinningPrism?.[eye] ?? -worked.thinning.y;
  const addD = verification?.addD ?? ordered.addD;
  // The marks of a progressive say where it sits, not what was ground: its prism has to be read.
  const asked = worked.cross === null || measured.prism !== undefined;
  const centre = asked ? foundCentre(judged, worked, measured) : null;
  return {
    ordered: {
      power: verification?.power ?? ordered.power,
      prism: verification?.prism ?? ordered.prism,
      ...(addD === 0 ? {} : { addD }),
    },
    measured: {
      power: measured.power,
      ...(measured.addD === undefined ? {} : { addD: measured.addD }),
      ...(measured.prism === undefined ? {} : { prism: withoutThinning(measured.prism, thinning) }),
      ...(centre === null ? {} : { centreFromOrdered: centre }),
    },
    placed: lensItems(judged, worked, measured),
  };
}

/** The thinning prism is base down: taking it off raises what is left. */
const withoutThinning = ({ x, y }: PrismVector, amount: number): PrismVector => ({ x, y: y + amount });

/** Height that the found place is compared with: the cross of a progressive, else the reference point. */
const orderedHeightMm = ({ situation }: JudgedPair, { cross, reference }: WorkedLens) =>
  (cross ?? reference).yMm + situation.frame.bMm / 2;

/** Found place of the reference point from the ordered one, front view; null unless both its numbers are known. */
function foundCentre(judged: JudgedPair, worked: WorkedLens, measured: MeasuredLens): PointMm | null {
  const { pdMm, heightMm } = measured;
  if (pdMm === undefined || heightMm === undefined) return null;
  return {
    xMm: nasalSign(worked.eye) * (worked.pdMm - pdMm),
    yMm: heightMm - orderedHeightMm(judged, worked),
  };
}

function lensItems(judged: JudgedPair, worked: WorkedLens, measured: MeasuredLens): ComparedItems {
  const { situation } = judged;
  const items: Record<string, { ordered: number; measured: number | null }> = {};
  const compare = (item: string, ordered: number, found: number | undefined) => {
    if (found !== undefined) items[item] = { ordered, measured: found };
  };
  // Without it nobody knows where the lens sits before the eye: a pair passes with nothing of this left out.
  const need = (item: string, ordered: number, found: number | undefined) => {
    items[item] = { ordered, measured: found ?? null };
  };
  if (worked.cross !== null) {
    need('fitting-cross-height', orderedHeightMm(judged, worked), measured.heightMm);
    need('fitting-cross-horizontal', worked.pdMm, measured.pdMm);
  }
  if (worked.segmentTop !== null) {
    need('segment-height', worked.segmentTop.yMm + situation.frame.bMm / 2, measured.segmentHeightMm);
    compare('segment-tilt', 0, measured.segmentTiltDeg);
  }
  compare('centre-thickness', worked.lens.centreThicknessMm, measured.centreThicknessMm);
  const reading = measured.baseCurveReadingD;
  const found = reading === undefined ? undefined : truePowerD(reading, situation.material.ne);
  compare('base-curve', worked.lens.baseCurveD, found);
  compare('warpage', 0, measured.warpageD);
  if (situation.tint?.polarised) compare('polarising-axis', 180, measured.polarisingAxisDeg);
  return items;
}

function pairItems(
  judged: JudgedPair,
  right: WorkedLens,
  left: WorkedLens,
  measured: MeasuredPair,
): ComparedItems {
  const items: Record<string, { ordered: number; measured: number }> = {};
  const difference = (item: string, ordered: number, r: number | undefined, l: number | undefined) => {
    if (r !== undefined && l !== undefined) items[item] = { ordered, measured: r - l };
  };
  if (right.cross !== null && left.cross !== null) {
    const ordered = orderedHeightMm(judged, right) - orderedHeightMm(judged, left);
    difference('fitting-cross-height-difference', ordered, measured.right.heightMm, measured.left.heightMm);
  }
  if (right.segmentTop !== null && left.segmentTop !== null) {
    const ordered = right.segmentTop.yMm - left.segmentTop.yMm;
    const { segmentHeightMm: r } = measured.right;
    difference('segment-height-difference', ordered, r, measured.left.segmentHeightMm);
    if (measured.segmentSeparationMm !== undefined)
      items['segment-separation'] = {
        ordered: (right.nearPdMm ?? right.pdMm) + (left.nearPdMm ?? left.pdMm),
        measured: measured.segmentSeparationMm,
      };
  }
  return items;
}
