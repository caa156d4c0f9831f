/** What the owner adds before papers are printed, as typed, and as the papers take it. */
import { isCivilDate } from '../../catalogue/civilDate.ts';
import { parseDecimal } from '../../money/decimal.ts';
import type { MeasuredPair } from '../../workroom/inspection/measured.ts';
import type { PaperOptions } from '../../workroom/papers/context.ts';
import type { Draft } from './benchState.ts';

/** Fields of the order as a whole; those of a pair have `0.` and so on before them. */
export const ORDER_FIELDS = [
  'paidAmount',
  'paidOn',
  'paidHow',
  'parcelOn',
  'carrier',
  'parcelNumber',
] as const;
export type OrderField = (typeof ORDER_FIELDS)[number];

export interface PaperEntries {
  readonly options: PaperOptions;
  /** Fields that cannot be read; what they belong to is left off the papers. */
  readonly wrong: readonly OrderField[];
}

/** The papers' options from what was typed. `measured` and the fields of pairs go by the index of the pair. */
export function readPaperEntries(
  draft: Draft,
  measured: readonly (MeasuredPair | null)[],
  currencyDigits: number,
): PaperEntries {
  const text = (field: string) => (draft[field] ?? '').trim();
  const ofPairs = (field: 'markings' | 'supplierRemark') =>
    measured.map((_, at) => text(`${at}.${field}`) || null);
  const wrong: OrderField[] = [];
  const day = (field: OrderField) => {
    const on = text(field);
    if (!isCivilDate(on)) wrong.push(field);
    return on;
  };
  const paid = () => {
    if (text('paidAmount') === '') return {};
    const amount = parseDecimal(text('paidAmount'), currencyDigits);
    if (!amount.ok || amount.minor < 0) wrong.push('paidAmount');
    const on = day('paidOn');
    return amount.ok && wrong.length === 0
      ? { paid: { on, how: text('paidHow'), amountMinor: amount.minor } }
      : {};
  };
  const parcel = () => {
    if (text('carrier') === '' && text('parcelNumber') === '') return {};
    const on = day('parcelOn');
    return isCivilDate(on) ? { parcel: { on, carrier: text('carrier'), number: text('parcelNumber') } } : {};
  };
  const options: PaperOptions = {
    ...{ measured, markings: ofPairs('markings'), supplierRemark: ofPairs('supplierRemark') },
    ...(draft['honour'] === 'yes' ? { price: 'shown' as const } : {}),
    ...paid(),
    ...parcel(),
  };
  return { options, wrong };
}
