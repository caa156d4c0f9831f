/** Which sentences of the shop an order does not carry. */
import type { Shop } from '../catalogue/shop.ts';
import type { Order } from '../order/order.ts';

/**
 * Ids of the shop's consents that were not accepted in the words that it has now. An order in another language holds
 * other words, so that its consents are told by their ids alone.
 */
export function consentsOpen(
  { consents, request }: Pick<Order, 'consents' | 'request'>,
  shop: Pick<Shop, 'language' | 'order'>,
): readonly string[] {
  const translated = request.language !== undefined && request.language !== shop.language;
  return shop.order.consents
    .filter(({ id, text }) => !consents.some((one) => one.id === id && (translated || one.text === text)))
    .map(({ id }) => id);
}
