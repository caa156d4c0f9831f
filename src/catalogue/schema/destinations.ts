/** What is charged by where an order goes: shipping and tax. */
import * as z from 'zod/mini';
import { about } from './about.ts';
import { fields, list, type MoneyFields, oneOf, text, textLike } from './fields.ts';
import { percent } from './money.ts';

const PLACE = /^(?:[A-Z]{2}(?:-[A-Z0-9]{1,3})?|\*)$/;

/** A place that a rate holds for. */
export function place() {
  return textLike(PLACE, 'a country such as US, a part of it such as US-ME, or "*" for anywhere else');
}

/** What sending an order costs. */
export function shippingRate(money: MoneyFields) {
  return z.pipe(
    fields({
      destinations: about(
        'Where it holds; the longer name is tried first.',
        list(place(), 1),
        ['US-ME'],
        ['*'],
      ),
      label: about('What the line of a quote says.', text(), 'Tracked parcel'),
      amount: about('Of an order.', money.price),
    }),
    z.transform(({ amount, ...rest }) => ({ ...rest, amountMinor: amount })),
  );
}

/** A tax of some places. */
export function taxRate() {
  return z.pipe(
    fields({
      destinations: about(
        'Where it holds; the longer name is tried first.',
        list(place(), 1),
        ['US-ME'],
        ['*'],
      ),
      label: about('What the line of a quote says.', text(), 'Sales tax'),
      percent: about('Rate in percent.', percent(), '5.5'),
      on: about('What the tax is taken on.', list(oneOf(['frame', 'lenses', 'shipping']), 1)),
    }),
    z.transform(({ percent: ratePpm, ...rest }) => ({ ...rest, ratePpm })),
  );
}
