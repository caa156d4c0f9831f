/** A job of the workroom: one order, as much of it as the bench and its papers need. */
import { showNumber } from '../order/number.ts';
import type { Order, OrderPair, PrescriptionPaper } from '../order/order.ts';

export { isOrderNumber, showNumber } from '../order/number.ts';

export type JobPair = Pick<
  OrderPair,
  'wearer' | 'measuredBy' | 'measuredNote' | 'confirmed' | 'wornBaseCurveD'
> & {
  /** Null where the request has no prescription. */
  readonly prescription: Pick<PrescriptionPaper, 'written' | 'prescriber'> | null;
};

/** An order without its attachments, so that these need not be kept at hand. */
export type JobOrder = Pick<Order, 'buyer' | 'request' | 'shown' | 'payment' | 'notes'> & {
  /** One for each pair of the request, in the same order. */
  readonly pairs: readonly JobPair[];
};

export interface Job {
  /** 12 digits. */
  readonly number: string;
  /** Civil date of the order: what prices and findings are judged for. */
  readonly date: string;
  readonly order: JobOrder;
}

/** The job of an order as read. */
export const jobOf = (order: JobOrder & Pick<Order, 'number'>): Job => ({
  number: order.number,
  date: order.request.date,
  order,
});

/** Names of those who will wear a pair (index from 0), or any of the pairs where it is null; each once. */
export const wearers = ({ order }: Job, pair: number | null): readonly string[] => [
  ...new Set(order.pairs.filter((_, at) => pair === null || at === pair).map(({ wearer }) => wearer)),
];

/** The job's number as it is read aloud. */
export const shownNumber = ({ number }: Job): string => showNumber(number);
