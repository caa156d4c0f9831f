/** A pair as ordered in every figure: what an empty inspection sheet takes its items and limits from. */
import { addPrisms } from '../../optics/prism.ts';
import { toolReadingD } from '../../optics/toolIndex.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import { type WorkedLens, workedLens } from '../workedLens.ts';
import type { MeasuredLens, MeasuredPair } from './measured.ts';

/** Measurements that equal the order, so that each item comes with its limit; null where a lens cannot be computed. */
export function perfectPair(judged: JudgedPair): MeasuredPair | null {
  const right = workedLens(judged, 'right');
  const left = workedLens(judged, 'left');
  if (right === null || left === null) return null;
  const nearPd = ({ nearPdMm, pdMm }: WorkedLens) => nearPdMm ?? pdMm;
  return {
    right: asOrdered(judged, right),
    left: asOrdered(judged, left),
    by: '',
    on: '',
    ...(right.segmentTop === null ? {} : { segmentSeparationMm: nearPd(right) + nearPd(left) }),
    alignment: [],
  };
}

function asOrdered({ situation }: JudgedPair, worked: WorkedLens): MeasuredLens {
  const { ordered, thinning, cross, reference, segmentTop, pdMm, lens } = worked;
  const half = situation.frame.bMm / 2;
  return {
    power: ordered.power,
    ...(ordered.addD === 0 ? {} : { addD: ordered.addD }),
    prism: addPrisms(ordered.prism, thinning),
    pdMm,
    heightMm: (cross ?? reference).yMm + half,
    ...(segmentTop === null ? {} : { segmentHeightMm: segmentTop.yMm + half, segmentTiltDeg: 0 }),
    centreThicknessMm: lens.centreThicknessMm,
    baseCurveReadingD: toolReadingD(lens.baseCurveD, situation.material.ne),
    warpageD: 0,
    ...(situation.tint?.polarised ? { polarisingAxisDeg: 180 } : {}),
  };
}
