import type { ShopWords } from './shopWords.ts';

/** What a size or colourway changes in the price, in words; minor units. */
export function priceDifference({ money, t }: ShopWords, minor: number): string {
  if (minor === 0) return t('frame.noDifference');
  return minor > 0
    ? t('frame.dearer', { amount: money(minor) })
    : t('frame.cheaper', { amount: money(-minor) });
}
