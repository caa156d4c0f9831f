import type { Offer } from '../catalogue/catalogue.ts';
import { isCivilDate } from '../catalogue/civilDate.ts';
import { dayInWords } from '../catalogue/dayInWords.ts';
import { type Slots, say } from '../catalogue/words.ts';
import { formatMoney, formatPercent } from '../money/format.ts';
import type { Slot, Wording } from './charge.ts';

/** The slots of a wording as text: sums with the shop's currency, shares as percentages, days in words. */
export function slotsOf({ shop }: Offer, slots: Readonly<Record<string, Slot>>): Slots {
  const written = (slot: Slot): string | number => {
    if (typeof slot === 'string' && isCivilDate(slot)) return dayInWords(slot, shop.language);
    if (typeof slot !== 'object') return slot;
    if ('ppm' in slot) return formatPercent(slot.ppm, shop.language);
    return formatMoney(slot.minor, shop.currency, shop.currencyDigits, shop.language);
  };
  return Object.fromEntries(Object.entries(slots).map(([name, slot]) => [name, written(slot)]));
}

/** The sentence itself; throws an Error when the shop's words lack it. */
export function worded(offer: Offer, label: Wording | string): string {
  return typeof label === 'string' ? label : say(offer.words, label.key, slotsOf(offer, label.slots));
}
