/** Rows of the table of figures on the page of a lens option. */
import type { RangeD } from '../../catalogue/design.ts';
import type { OptionText, Surcharge } from '../../catalogue/limit.ts';
import { figure, money, power, t } from '../shopWords.ts';

/** A label and the figure beside it, both as shown. */
export interface Row {
  readonly label: string;
  readonly value: string;
}

/** A row by the key of its label below `page.figure`. */
export function row(key: string, value: string): Row {
  return { label: t(`figure.${key}`), value };
}

/** A length in mm. */
export function mm(value: number): string {
  return `${figure(value, 2)} ${t('unit.mm')}`;
}

/** A power in D. */
export function dioptres(value: number): string {
  return `${power(value)} ${t('unit.dioptre')}`;
}

/** A range of powers in D. */
export function rangeD(range: RangeD): string {
  return t('option.range', { from: power(range.from), to: dioptres(range.to) });
}

/** Yes or no. */
export function yesNo(value: boolean): string {
  return t(value ? 'option.yes' : 'option.no');
}

/** Price of an option a pair, or that it is not charged for. */
export function optionPrice({ priceMinor }: Pick<OptionText, 'priceMinor'>): string {
  return priceMinor === 0 ? t('lenses.included') : t('lenses.price', { price: money(priceMinor) });
}

/** Extra charges as rows. */
export function surchargeRows(surcharges: readonly Surcharge[]): readonly Row[] {
  return surcharges.map((s) => ({
    label: s.label,
    value: t('lenses.price', { price: money(s.priceMinor) }),
  }));
}
