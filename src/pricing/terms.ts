/** What holds for a whole order before its goods are looked at: the day, the place, the exemption and the codes. */
import type { Offer } from '../catalogue/catalogue.ts';
import { compareDates, isCivilDate } from '../catalogue/civilDate.ts';
import type { Promotion } from '../catalogue/promotion.ts';
import type { ShippingRate, TaxExemption, TaxRate } from '../catalogue/shop.ts';
import { type Slots, say } from '../catalogue/words.ts';
import type { Wording } from './charge.ts';
import { sameCode } from './codes.ts';
import { entriesFor, placeOf, placesNamed } from './destination.ts';
import type { Asked } from './pair.ts';
import type { Candidate } from './promotions.ts';
import type { PriceWord } from './words.ts';

/** One thing in the request that has no price. */
export interface PriceFault {
  /** Such as `destination`, in the request. */
  readonly path: string;
  readonly message: string;
  readonly expected: string;
  readonly found: string;
}

export interface Terms {
  readonly shipping: ShippingRate;
  /** Those of the destination; none where the shop adds no tax at all. An exemption puts them aside. */
  readonly taxes: readonly TaxRate[];
  readonly exemption: TaxExemption | null;
  readonly candidates: readonly Candidate[];
}

export type TermsReply =
  | { readonly ok: true; readonly terms: Terms }
  | { readonly ok: false; readonly faults: readonly PriceFault[] };

/** A fault's sentence; what was expected has the same key with `-expected`. */
type FaultWord = Exclude<Extract<PriceWord, `price.fault.${string}`>, `${string}-expected`>;

function outOfDate({ title, starts, ends }: Promotion, date: string): Wording | null {
  if (starts !== null && compareDates(date, starts) < 0)
    return { key: 'price.why.not-yet', slots: { title, starts } };
  if (ends !== null && compareDates(date, ends) > 0) return { key: 'price.why.over', slots: { title, ends } };
  return null;
}

/** The promotions that this order may try, in declared order: those without a code, and those whose code was typed. */
export function candidatesFor(
  promotions: readonly Promotion[],
  { codes, date }: Pick<Asked, 'codes' | 'date'>,
): Candidate[] {
  return promotions
    .filter(({ code }) => code === null || codes.some((typed) => sameCode(typed, code)))
    .map((promotion) => ({ promotion, outOfDate: outOfDate(promotion, date) }));
}

/**
 * The terms of an order, or the faults that leave it without a price: a date that is none, a destination for which
 * no shipping (or, in a shop that adds tax, no tax rate) is declared, an exemption that is unknown or does not hold
 * there. Nothing is ever free because no rate was found: a rate of 0 has to be declared.
 */
export function termsOf(offer: Offer, asked: Asked): TermsReply {
  const { shop, words } = offer;
  const faults: PriceFault[] = [];
  const fault = (path: string, key: FaultWord, found: string, slots: Slots): void => {
    const message = say(words, key, { found, ...slots });
    faults.push({ path, message, expected: say(words, `${key}-expected`, slots), found });
  };

  if (!isCivilDate(asked.date)) fault('date', 'price.fault.date', asked.date, {});
  const place = placeOf(asked.destination);
  const [shipping] = place === null ? [] : entriesFor(shop.shipping, place);
  if (!shipping)
    fault('destination', 'price.fault.shipping', asked.destination, { places: placesNamed(shop.shipping) });

  const claimed = asked.taxExemption;
  const exemption = shop.exemptions.find(({ id }) => id === claimed) ?? null;
  if (claimed !== null && exemption === null)
    fault('taxExemption', 'price.fault.exemption', claimed, {
      ids: shop.exemptions.map(({ id }) => id).join(', ') || '-',
    });
  if (exemption && place !== null && entriesFor([exemption], place).length === 0) {
    const slots = { label: exemption.label, place, places: placesNamed([exemption]) };
    fault('taxExemption', 'price.fault.exemption-place', exemption.id, slots);
  }

  const taxes = place === null ? [] : entriesFor(shop.tax, place);
  if (place !== null && claimed === null && shop.tax.length > 0 && taxes.length === 0)
    fault('destination', 'price.fault.tax', asked.destination, { places: placesNamed(shop.tax) });

  if (!shipping || faults.length > 0) return { ok: false, faults };
  const candidates = candidatesFor(offer.promotions, asked);
  return { ok: true, terms: { shipping, taxes, exemption, candidates } };
}
