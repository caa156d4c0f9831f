/** In which measurements a related frame differs, in words. */
import { sizeName } from '../catalogue/sizeNames.ts';
import type { Related } from './relatedFrames.ts';
import type { ShopWords } from './shopWords.ts';

const MEASURES = [
  ['a', 'aMm'],
  ['b', 'bMm'],
  ['dbl', 'dblMm'],
  ['ed', 'edMm'],
] as const;

/** Differences of its nearest size from that of the frame, signed, to 0.1 mm. */
export function relatedNote({ figure, list, t }: ShopWords, { size, own }: Related): string {
  const signed = (mm: number) => `${mm > 0 ? '+' : '−'}${figure(Math.abs(mm), 1)}`;
  const differences = MEASURES.flatMap(([key, field]) => {
    const mm = Math.round(10 * (size[field] - own[field])) / 10;
    return mm === 0 ? [] : [t(`related.${key}`, { mm: signed(mm) })];
  });
  if (differences.length === 0) return t('related.same', { size: sizeName(size) });
  return t('related.differs', { size: sizeName(size), own: sizeName(own), differences: list(differences) });
}
