/** The stores of an order page over the demonstration shop, with a device that does as it is told. */
import { answerBasket } from '../../../src/configurator/basket/answerBasket.ts';
import { BASKET, type Basket, NO_BASKET, put } from '../../../src/configurator/basket/basket.ts';
import { choicesOf } from '../../../src/configurator/choices.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { hold } from '../../../src/configurator/keeping/holding.ts';
import { holdPair } from '../../../src/configurator/keeping/parts.ts';
import type { Device } from '../../../src/configurator/order/delivering.ts';
import type { OrderFile } from '../../../src/configurator/order/madeFile.ts';
import { cautionsOf, orderedPairs } from '../../../src/configurator/order/orderedPairs.ts';
import { loadOrderParts, type OrderingShop } from '../../../src/configurator/order/orderParts.ts';
import { createOrder, type OrderStores } from '../../../src/configurator/order/orderStores.ts';
import { cautionField, consentField, ofPair } from '../../../src/configurator/order/typed.ts';
import { shopData } from '../../../src/configurator/shopData.ts';
import { emptyShelves } from '../keeping/shelf.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const data = shopData(shop);
export const parts = await loadOrderParts();

export const MYOPE: Entries = {
  'right.sphere': '-3.25',
  'left.sphere': '-2.75',
  'pd.right': '31.5',
  'pd.left': '32',
  issued: '2026-06-01',
};

/** A basket of pairs by frame and entries. */
export const basketOf = (...pairs: readonly (readonly [string, Entries])[]): Basket =>
  pairs.reduce<Basket>(
    (basket, [id, entries]) =>
      put(basket, holdPair(id, entries, choicesOf(entries, frameOf(id), data, DATE))) ?? basket,
    NO_BASKET,
  );

export interface Told {
  readonly saved: OrderFile[];
  readonly shared: OrderFile[];
  readonly posted: { readonly address: string; readonly file: OrderFile }[];
  readonly mails: string[];
}

interface Asked {
  readonly basket?: Basket;
  readonly order?: Partial<OrderingShop['order']>;
  readonly device?: Partial<Device>;
  readonly shelves?: ReturnType<typeof emptyShelves>;
}

let drawn = 0;

/** An order page that has its answer. */
export async function opened({ basket, order, device, shelves = emptyShelves() }: Asked = {}) {
  hold(shelves, BASKET, basket ?? basketOf(['sanderling', MYOPE]), false);
  const told: Told = { saved: [], shared: [], posted: [], mails: [] };
  const frames = (id: string) => shop.frames.find((frame) => frame.id === id) ?? null;
  const stores = createOrder({
    shelves,
    parts,
    ask: async (question) => answerBasket(question.basket, frames, data, question.date),
    date: DATE,
    shop: { ...shop.shop, order: { ...shop.shop.order, ...order } },
    shopVersion: '0'.repeat(64),
    words: shop.words,
    random: (count) => {
      drawn += 1;
      return new Uint8Array(count).fill(drawn);
    },
    device: {
      isOnline: () => true,
      save: (file) => told.saved.push(file),
      openMail: (link) => told.mails.push(link),
      share: async (file) => {
        told.shared.push(file);
        return 'shared';
      },
      post: async (address, file) => {
        told.posted.push({ address, file });
        return 200;
      },
      ...device,
    },
  });
  await stores.basket.judge();
  // A store has a value while somebody listens, as on the page.
  for (const store of [stores.open, stores.changed, stores.unsaved]) store.listen(() => undefined);
  return { stores, told, shelves };
}

/** Fills in all that an order needs. */
export function fillIn({ basket, form }: OrderStores): void {
  const answered = basket.answered.get();
  if (answered === null) throw new Error('The basket has no answer yet.');
  for (const { id, standing } of orderedPairs(answered)) {
    form.enter(ofPair(id, 'wearer'), 'Ada Marsh');
    form.enter(ofPair(id, 'prescriber'), 'Dr Wren');
    form.enter(ofPair(id, 'measuredBy'), 'optician');
    for (const { rule, text } of cautionsOf(shop.words, standing)) form.enter(cautionField(id, rule), text);
  }
  for (const [field, text] of [
    ['name', 'Ada Marsh'],
    ['address', '4 Tide Street\n\n Merriwick, Maine 04000'],
    ['email', 'ada@mail.example'],
    ['payment', 'invoice'],
  ] as const)
    form.enter(field, text);
  for (const { id, text } of shop.shop.order.consents) form.enter(consentField(id), text);
}
