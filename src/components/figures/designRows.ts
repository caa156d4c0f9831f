import type { Corridor, Design, Segment } from '../../catalogue/design.ts';
import { list, percent, t } from '../shopWords.ts';
import { dioptres, mm, type Row, rangeD, row } from './row.ts';

/** Figures of a design: what it is for, its powers, and its corridor or segment. */
export function designRows(design: Design): readonly Row[] {
  const hasPower = design.kind !== 'plano';
  return [
    row('designKind', t(`designKind.${design.kind}`)),
    row('uses', list(design.uses.map((use) => t(`use.${use}`)))),
    ...(hasPower
      ? [row('sphere', rangeD(design.sphereD)), row('cylinder', dioptres(-Math.abs(design.cylinderD)))]
      : []),
    ...(design.addD ? [row('add', rangeD(design.addD))] : []),
    ...(hasPower ? [row('prism', `${design.prism} ${t('unit.prism')}`)] : []),
    row('faceForm', `${design.faceFormDeg}${t('unit.degree')}`),
    ...(design.corridor ? corridorRows(design.corridor) : []),
    ...(design.segment ? segmentRows(design.segment) : []),
  ];
}

function corridorRows(corridor: Corridor): readonly Row[] {
  const least = corridor.leastFittingHeightMm;
  const share = percent(corridor.thinningPrismShare, 0);
  return [
    row('corridor', mm(corridor.lengthMm)),
    row('corridorDefinition', corridor.definition),
    ...(least === null ? [] : [row('leastHeight', mm(least))]),
    row('leastAbove', mm(corridor.leastAboveCrossMm)),
    row('reference', mm(corridor.referenceBelowCrossMm)),
    ...(corridor.thinningPrismShare > 0
      ? [row('thinning', t('figure.thinningValue', { percent: share }))]
      : []),
  ];
}

function segmentRows(segment: Segment): readonly Row[] {
  return [
    row('segmentWidth', mm(segment.widthMm)),
    row('segmentDepth', mm(segment.depthMm)),
    row('segmentHeight', mm(segment.leastHeightMm)),
  ];
}
