/** What the schemas of all lens options share. */
import * as z from 'zod/mini';
import { type DeclaredLimit, OPTION_KINDS, type OptionKind } from '../limit.ts';
import { about } from './about.ts';
import { fields, id, list, type MoneyFields, number, oneOf, orElse, orNull, text } from './fields.ts';

/** Fields of every design, material, tint and coating. */
export function optionFields(money: MoneyFields) {
  return {
    order: about(
      'Place among its kind in the shop: lower first, equal ones by name. Default 1000.',
      orElse(number(-1e6, 1e6), 1000),
    ),
    name: about('Name that the shopper reads.', text(), 'Anti-reflective'),
    summary: about('One sentence for the worksheet.', text()),
    price: about('Of a pair, added to the lenses.', money.price),
    limits: about('What it does not go with, each with its reason. Default none.', orElse(list(limit()), [])),
  };
}

type LimitIds = Partial<Record<OptionKind, string[]>>;

function idsByKind() {
  const ids = z.optional(list(id(), 1));
  const named = (kind: OptionKind) => about(`Ids of each ${kind} that is meant.`, ids);
  const shape = Object.fromEntries(OPTION_KINDS.map((kind) => [kind, named(kind)])) as Record<
    OptionKind,
    typeof ids
  >;
  return z.pipe(
    fields(shape),
    z.transform((named): LimitIds => named as LimitIds),
  );
}

/** `onlyWith` or `notWith`, the reason, and how strict it is. */
function limit() {
  const shared = {
    because: about('Sentence that the shopper reads.', text('a sentence for the shopper')),
    level: about(
      '`stop` refuses, `caution` asks for a confirmation. Default stop.',
      orElse(oneOf(['stop', 'caution']), 'stop' as const),
    ),
  };
  /** It goes with these alone: each kind that is named must be one of the ids. */
  const only = fields({ onlyWith: about('What it goes with, by kind.', idsByKind()), ...shared });
  /** It does not go with these: when every kind that is named is one of the ids. */
  const not = fields({ notWith: about('What it does not go with, by kind.', idsByKind()), ...shared });
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
      label: about('What the line of the quote says.', text()),
      of: about(
        'What is compared, in absolute value, of the stronger eye.',
        oneOf(['strongest-meridian', 'cylinder', 'prism', 'add']),
      ),
      above: about('Charged above this (exclusive), D or prism dioptres.', number(0, 40, 'D')),
      upTo: about('And up to this (inclusive). Default null: without end.', orNull(number(0, 40, 'D'))),
      price: about('Of a pair.', money.price),
    }),
    z.transform(({ price, ...rest }) => ({ ...rest, priceMinor: price })),
  );
}
