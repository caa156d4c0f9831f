/** Offers for one frame that run on the day of the build, each with its end, and what the frame then costs. */
import type { Frame } from '../../catalogue/frame.ts';
import { priceSpan } from '../frameFacts.ts';
import { frameOffers } from '../frameOffers.ts';
import { builtOn, type ShopWords } from '../shopWords.ts';
import { markup } from './markup.ts';

/** The offers; nothing where there are none. */
export function offers({ catalogue, day, money, t }: ShopWords, frame: Frame): string {
  const { promotions, fromMinor } = frameOffers(catalogue, frame, builtOn);
  if (promotions.length === 0) return '';
  const { fromMinor: least, toMinor: most } = priceSpan(frame);
  const key = least === most ? 'card.offer' : 'card.offerFrom';
  const price =
    fromMinor === null ? '' : `<p class="offer-price">${markup(t(key, { price: money(fromMinor) }))}</p>`;
  const told = promotions.map(({ sentence, ends }) => {
    const days = ends && t('promotions.lastDay', { date: day(ends) });
    return `<p>${markup(sentence)}.${days ? ` <span class="offer-days">${markup(days)}</span>` : ''}</p>`;
  });
  return `<div class="frame-offers">${price}${told.join('')}</div>`;
}
