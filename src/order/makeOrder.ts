/** An order from what the buyer entered and the shop answered. Neither clock nor chance: number and date are given. */
import type { Shop } from '../catalogue/shop.ts';
import type { Answer } from '../quote/answer.ts';
import type { QuoteRequest } from '../quote/request.ts';
import { showNumber } from './number.ts';
import { type Buyer, ORDER_VERSION, type Order, type OrderPair, VERSION_KEY } from './order.ts';
import { fillPayment, type Paid } from './payment.ts';
import { shownOf } from './shown.ts';
import { plainLine, plainText } from './text.ts';

export interface OrderDraft {
  /** From orderNumber. */
  readonly number: string;
  /** From shopVersion, when the page was built. */
  readonly shopVersion: string;
  readonly buyer: Buyer;
  readonly request: QuoteRequest;
  /** One for each pair of the request. */
  readonly pairs: readonly OrderPair[];
  /** The answer that the buyer saw. */
  readonly answer: Answer;
  /** Ids of the shop's consents that were accepted. */
  readonly accepted: readonly string[];
  /** Id of a way to pay; null where the shop names none. */
  readonly payment: string | null;
  readonly notes: string;
}

/** What of a shop goes into an order. */
export type OrderingShop = Paid & Pick<Shop, 'name' | 'address' | 'order'>;

/** The order of a draft; every text of it in plain characters. What a draft still lacks is missing.ts. */
export function makeOrder({ shop }: { readonly shop: OrderingShop }, draft: OrderDraft): Order {
  const { number, shopVersion, buyer, request, pairs, answer, accepted, notes } = draft;
  const payment = shop.order.payments.find(({ id }) => id === draft.payment);
  return plainTexts({
    [VERSION_KEY]: ORDER_VERSION,
    number,
    shop: { name: shop.name, address: shop.address, version: shopVersion },
    buyer: {
      name: plainLine(buyer.name),
      lines: buyer.lines.map(plainLine).filter((line) => line !== ''),
      email: plainLine(buyer.email),
      phone: plainLine(buyer.phone),
    },
    request,
    pairs: pairs.map((pair) => ({ ...pair, wearer: plainLine(pair.wearer) })),
    shown: shownOf(answer),
    consents: shop.order.consents.filter(({ id }) => accepted.includes(id)),
    payment: payment === undefined ? null : fillPayment(shop, payment, number, answer.price.total),
    notes,
  });
}

/** Every text in it made plain; keys are ours. */
function plainTexts<T>(value: T): T {
  if (typeof value === 'string') return plainText(value) as T;
  if (Array.isArray(value)) return value.map(plainTexts) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plainTexts(inner)])) as T;
}

/** The order as the bytes of its file. */
export const orderBytes = (order: Order): Uint8Array =>
  new TextEncoder().encode(`${JSON.stringify(order, null, 1)}\n`);

/** Name of the order's file, such as `order-4821-0937-5562.json.age` when it is sealed. */
export const orderFileName = (number: string, sealed: boolean): string =>
  `order-${showNumber(number)}.json${sealed ? '.age' : ''}`;
