/** What the schemas of all lens options share. */
import * as z from 'zod/mini';
import { type DeclaredLimit, OPTION_KINDS, type OptionKind } from '../limit.ts';
import { fields, id, list, type MoneyFields, number, oneOf, orElse, orNull, text } from './fields.ts';

/** Fields of every design, material, tint and coating. */
export function optionFields(money: MoneyFields) {
  return {
    /** Place among its kind in the shop: lower first, equal ones by name. Default 1000. */
    order: orElse(number(-1e6, 1e6), 1000),
    /** Name that the shopper reads. */
    name: text(),
    /** One sentence for the worksheet. */
    summary: text(),
    /** Price of a pair, added to the lenses. */
    price: money.price,
    /** What it does not go with, each with its reason. Default none. */
    limits: orElse(list(limit()), []),
  };
}

type LimitIds = Partial<Record<OptionKind, string[]>>;

function idsByKind() {
  const ids = z.optional(list(id(), 1));
  const shape = Object.fromEntries(OPTION_KINDS.map((kind) => [kind, ids])) as Record<OptionKind, typeof ids>;
  return z.pipe(
    fields(shape),
    z.transform((named): LimitIds => named as LimitIds),
  );
}

/** `onlyWith` or `notWith`, the reason, and how strict it is. */
function limit() {
  const shared = {
    /** Sentence that the shopper reads. */
    because: text('a sentence for the shopper'),
    /** `stop` refuses, `caution` asks for a confirmation. Default stop. */
    level: orElse(oneOf(['stop', 'caution']), 'stop' as const),
  };
  /** It goes with these alone: each kind that is named must be one of the ids. */
  const only = fields({ onlyWith: idsByKind(), ...shared });
  /** It does not go with these: when every kind that is named is one of the ids. */
  const not = fields({ notWith: idsByKind(), ...shared });
  return z.union(
    [
      z.pipe(
        only,
        z.transform(
          ({ onlyWith, ...rest }): DeclaredLimit => ({ kind: 'only-with', ids: onlyWith, ...rest }),
        ),
      ),
      z.pipe(
        not,
        z.transform(({ notWith, ...rest }): DeclaredLimit => ({ kind: 'not-with', ids: notWith, ...rest })),
      ),
    ],
    { error: 'onlyWith or notWith, and because' },
  );
}

/** An extra charge from a strength on. */
export function surcharge(money: MoneyFields) {
  return z.pipe(
    fields({
      /** What the line of the quote says. */
      label: text(),
      /** What is compared, in absolute value, of the stronger eye. */
      of: oneOf(['strongest-meridian', 'cylinder', 'prism', 'add']),
      /** Charged above this (exclusive), D or prism dioptres. */
      above: number(0, 40, 'D'),
      /** And up to this (inclusive). Default null: without end. */
      upTo: orNull(number(0, 40, 'D')),
      /** Of a pair. */
      price: money.price,
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
