/** Orders made from the demonstration shop, and what a hostile sender makes of them. */
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeOrder, type OrderDraft } from '../../src/order/makeOrder.ts';
import { orderNumber } from '../../src/order/number.ts';
import type { Order, OrderPair } from '../../src/order/order.ts';
import type { Answer } from '../../src/quote/answer.ts';
import { quote } from '../../src/quote/quote.ts';
import type { QuoteRequest } from '../../src/quote/request.ts';

const reading = loadCatalogue('content');
if (!reading.ok)
  throw new Error(`The demonstration shop has ${reading.faults.length} faults: run npm run check.`);

export const shop: Catalogue = reading.catalogue;

/** A single vision pair that the shop makes with care. */
export const request: QuoteRequest = {
  date: '2026-11-25',
  destination: 'US-ME',
  pairs: [
    {
      frame: 'sanderling',
      size: '51-19',
      colourway: 'wet-slate',
      wearer: 'adult',
      prescription: {
        right: { sphere: -6.25, cylinder: -0.75, axis: 170 },
        left: { sphere: -5.75 },
        vertexDistance: 12,
        issued: '2026-06-01',
      },
      fit: { pd: { right: 31.5, left: 32 }, fittingHeight: { right: 24, left: 24 } },
      lenses: {
        use: 'distance',
        design: 'single-vision',
        material: 'polycarbonate',
        tint: null,
        coating: 'anti-reflective',
        blank: 'auto',
      },
    },
  ],
};

/** What the shop answers; the request has to be one that it can read. */
function answerTo(asked: QuoteRequest): Answer {
  const reply = quote(shop, asked);
  if (!reply.ok) throw new Error(reply.faults.map(({ path, message }) => `${path}: ${message}`).join(' '));
  return reply.answer;
}

/** The first bytes of a JPEG picture, enough to be told by. */
export const PICTURE = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1]);

/** What is told of each pair of a request. */
export const pairsOf = (asked: QuoteRequest, answer: Answer): OrderPair[] =>
  asked.pairs.map(({ prescription }, at) => ({
    wearer: 'Ada Marsh',
    prescription: prescription && {
      written: 'OD -6.25 -0.75 x 170\nOS -5.75',
      prescriber: { name: 'Dr Wren', place: 'Merriwick, Maine' },
      attachments: [],
    },
    measuredBy: 'optician',
    measuredNote: '',
    confirmed: (answer.pairs[at]?.findings ?? []).flatMap(({ level, rule }) =>
      level === 'caution' ? [rule] : [],
    ),
    wornBaseCurveD: null,
  }));

/** A draft that lacks nothing, for a request and with changes. */
export function draftOf(asked: QuoteRequest = request, changed: Partial<OrderDraft> = {}): OrderDraft {
  const answer = changed.answer ?? answerTo(asked);
  return {
    number: orderNumber(new Uint8Array(16).fill(7)),
    shopVersion: '0'.repeat(64),
    buyer: {
      name: 'Ada Marsh',
      lines: ['4 Tide Street', 'Merriwick, Maine 04000'],
      email: 'ada@mail.example',
      phone: '',
    },
    request: asked,
    pairs: pairsOf(asked, answer),
    answer,
    accepted: shop.shop.order.consents.map(({ id }) => id),
    payment: 'invoice',
    notes: '',
    ...changed,
  };
}

export const orderOf = (asked: QuoteRequest = request, changed: Partial<OrderDraft> = {}): Order =>
  makeOrder(shop, draftOf(asked, changed));

/** An order as JSON that may be changed at will. */
// biome-ignore lint/suspicious/noExplicitAny: a sender may make of it whatever can be written
export const loose = (order: Order): any => JSON.parse(JSON.stringify(order));

/** The bytes of any JSON, or of a text as it stands. */
export const bytesOf = (json: unknown): Uint8Array =>
  new TextEncoder().encode(typeof json === 'string' ? json : JSON.stringify(json));
