/** What every part of the order page is given. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Shop } from '../../catalogue/shop.ts';
import type { OrderingShop, OrderParts } from '../../configurator/order/orderParts.ts';
import type { OrderStores } from '../../configurator/order/orderStores.ts';
import type { Telling } from '../keeping/telling.ts';

/** The part of the shop that the page itself speaks of. */
export type OrderPageShop = OrderingShop &
  Pick<Shop, 'path' | 'contact' | 'timeZone' | 'destination' | 'places' | 'shipping' | 'exemptions'>;

export interface Ordering {
  readonly stores: OrderStores;
  readonly parts: OrderParts;
  readonly shop: OrderPageShop;
  readonly telling: Telling;
  /** A text of this page; `key` without its leading `orderPage.`. */
  readonly o: Telling['say'];
}

export const Ordered = createContext<Ordering | null>(null);

/** What the page was given. Throws outside of it. */
export function useOrdering(): Ordering {
  const ordering = useContext(Ordered);
  if (ordering === null) throw new Error('A part of the order page stands outside of it.');
  return ordering;
}

/** Id of a field's element by its name. */
export const idOf = (field: string): string => `or-${field.replaceAll('.', '-')}`;

/** Brings a field into the window and puts the focus on it. */
export function goTo(field: string): void {
  const place = document.getElementById(idOf(field));
  place?.scrollIntoView({ block: 'center' });
  place?.focus({ preventScroll: true });
}
