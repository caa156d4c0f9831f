import type { Coating } from '../../catalogue/coating.ts';
import type { ShopWords } from '../shopWords.ts';
import { type Row, rowWriter } from './row.ts';

/** Figures of a coating. */
export function coatingRows(words: ShopWords, coating: Coating): readonly Row[] {
  const { percent, t } = words;
  const { row, yesNo } = rowWriter(words);
  return [
    row('coatedFaces', t(`faces.${coating.faces}`)),
    ...(coating.residualReflectance === null
      ? []
      : [row('residual', percent(coating.residualReflectance, 1))]),
    row('hardCoat', yesNo(coating.hard)),
  ];
}
