/** What moves totals without being a price: taxes, exemptions, promotions. */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Promotion } from '../../catalogue/promotion.ts';
import { formatPercent } from '../../money/format.ts';

export interface Term {
  readonly change: 'new' | 'gone' | 'changed';
  readonly source: string;
  readonly what: string;
}

/** Named texts against each other: the text of a change says old and new where both are short. */
function changes(
  source: (key: string) => string,
  old: Map<string, string>,
  now: Map<string, string>,
): Term[] {
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((key): Term[] => {
    const [was, is] = [old.get(key), now.get(key)];
    if (was === is) return [];
    if (was === undefined) return [{ change: 'new', source: source(key), what: is ?? '' }];
    if (is === undefined) return [{ change: 'gone', source: source(key), what: was }];
    return [{ change: 'changed', source: source(key), what: `${was} → ${is}` }];
  });
}

function taxes({ shop }: Catalogue): Map<string, string> {
  return new Map(
    shop.tax.map(({ destinations, label, ratePpm, on }) => [
      `${destinations.join(' ')} ${label}`,
      `${label}: ${formatPercent(ratePpm, 'en')} on ${on.join(', ')} (${destinations.join(', ')})`,
    ]),
  );
}

/** Fields of a promotion that differ, its text apart. */
function fieldsChanged(was: Promotion, is: Promotion): string[] {
  const fields = Object.keys(is) as (keyof Promotion)[];
  const differs = (field: keyof Promotion) => JSON.stringify(was[field]) !== JSON.stringify(is[field]);
  return fields.filter((field) => field !== 'story' && differs(field));
}

function promotionTerms(old: readonly Promotion[], now: readonly Promotion[]): Term[] {
  const of = (id: string) => `promotions/${id}`;
  const before = new Map(old.map((one) => [one.id, one]));
  const found = now.flatMap((one): Term[] => {
    const was = before.get(one.id);
    before.delete(one.id);
    if (was === undefined) return [{ change: 'new', source: of(one.id), what: one.sentence }];
    const changed = fieldsChanged(was, one);
    if (changed.length === 0) return [];
    const sentence = was.sentence === one.sentence ? one.sentence : `${was.sentence} → ${one.sentence}`;
    return [{ change: 'changed', source: of(one.id), what: `${sentence}: ${changed.join(', ')}` }];
  });
  return [
    ...found,
    ...[...before.values()].map((one): Term => ({ change: 'gone', source: of(one.id), what: one.sentence })),
  ];
}

/** Every such change from `old` to `now`. */
export function termsBetween(old: Catalogue, now: Catalogue): Term[] {
  return [
    ...changes(() => 'shop', taxes(old), taxes(now)),
    ...promotionTerms(old.promotions, now.promotions),
  ];
}
