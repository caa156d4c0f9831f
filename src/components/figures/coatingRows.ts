import type { Coating } from '../../catalogue/coating.ts';
import { percent, t } from '../shopWords.ts';
import { type Row, row, yesNo } from './row.ts';

/** Figures of a coating. */
export function coatingRows(coating: Coating): readonly Row[] {
  return [
    row('coatedFaces', t(`faces.${coating.faces}`)),
    ...(coating.residualReflectance === null
      ? []
      : [row('residual', percent(coating.residualReflectance, 1))]),
    row('hardCoat', yesNo(coating.hard)),
  ];
}
