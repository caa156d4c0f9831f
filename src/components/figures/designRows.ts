import type { Corridor, Design, Segment } from '../../catalogue/design.ts';
import type { ShopWords } from '../shopWords.ts';
import { type Row, rowWriter } from './row.ts';

/** Figures of a design: what it is for, its powers, and its corridor or segment. */
export function designRows(words: ShopWords, design: Design): readonly Row[] {
  const { figure, list, t } = words;
  const { dioptres, rangeD, row } = rowWriter(words);
  const hasPower = design.kind !== 'plano';
  return [
    row('designKind', t(`designKind.${design.kind}`)),
    row('uses', list(design.uses.map((use) => t(`use.${use}`)))),
    ...(hasPower
      ? [row('sphere', rangeD(design.sphereD)), row('cylinder', dioptres(-Math.abs(design.cylinderD)))]
      : []),
    ...(design.addD ? [row('add', rangeD(design.addD))] : []),
    ...(hasPower ? [row('prism', `${figure(design.prism)} ${t('unit.prism')}`)] : []),
    row('faceForm', `${figure(design.faceFormDeg)}${t('unit.degree')}`),
    ...(design.corridor ? corridorRows(words, design.corridor) : []),
    ...(design.segment ? segmentRows(words, design.segment) : []),
  ];
}

function corridorRows(words: ShopWords, corridor: Corridor): readonly Row[] {
  const { percent, t } = words;
  const { mm, row } = rowWriter(words);
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

function segmentRows(words: ShopWords, segment: Segment): readonly Row[] {
  const { mm, row } = rowWriter(words);
  return [
    row('segmentWidth', mm(segment.widthMm)),
    row('segmentDepth', mm(segment.depthMm)),
    row('segmentHeight', mm(segment.leastHeightMm)),
  ];
}
