/** Rows of the table of figures on the page of a lens option. */
import type { RangeD } from '../../catalogue/design.ts';
import type { OptionText, Surcharge } from '../../catalogue/limit.ts';
import type { ShopWords } from '../shopWords.ts';

/** A label and the figure beside it, both as shown. */
export interface Row {
  readonly label: string;
  readonly value: string;
}

/** How rows are written in the language of a page. */
export function rowWriter({ t, figure, money, power }: ShopWords) {
  const dioptres = (value: number): string => `${power(value)} ${t('unit.dioptre')}`;
  return {
    /** A row by the key of its label below `page.figure`. */
    row: (key: string, value: string): Row => ({ label: t(`figure.${key}`), value }),
    /** A length in mm. */
    mm: (value: number): string => `${figure(value, 2)} ${t('unit.mm')}`,
    /** A power in D. */
    dioptres,
    /** A range of powers in D. */
    rangeD: ({ from, to }: RangeD): string => t('option.range', { from: power(from), to: dioptres(to) }),
    yesNo: (value: boolean): string => t(value ? 'option.yes' : 'option.no'),
    /** Price of an option a pair, or that it is not charged for. */
    optionPrice: ({ priceMinor }: Pick<OptionText, 'priceMinor'>): string =>
      priceMinor === 0 ? t('lenses.included') : t('lenses.price', { price: money(priceMinor) }),
    /** Extra charges as rows. */
    surchargeRows: (surcharges: readonly Surcharge[]): readonly Row[] =>
      surcharges.map(({ label, priceMinor }) => ({
        label,
        value: t('lenses.price', { price: money(priceMinor) }),
      })),
  };
}
