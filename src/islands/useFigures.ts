/** Figures with their units in the shop's language. */
import { formatMoney } from '../money/format.ts';
import { useSheet } from './sheet.ts';

export function useFigures() {
  const { t, data } = useSheet();
  const { language, currency, currencyDigits } = data.shop;
  const fixed = (value: number, digits: number) =>
    new Intl.NumberFormat(language, { minimumFractionDigits: digits, maximumFractionDigits: digits }).format(
      value,
    );
  const money = (minor: number) =>
    formatMoney(minor, currency, currencyDigits, language).replace('-', '\u2212');
  return {
    money,
    /** Millimetres to 0.01. */
    mm: (value: number) => `${fixed(value, 2)} ${t('unit.mm')}`,
    /** Grams to 0.1. */
    gram: (value: number) => `${fixed(value, 1)} ${t('unit.gram')}`,
    dioptre: (value: number) => `${fixed(value, 2)} ${t('unit.dioptre')}`,
    prism: (value: number) => `${fixed(value, 2)} ${t('unit.prism')}`,
    /** One share, or the least to the most of several. */
    percents: (shares: readonly number[]) => {
      const percent = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
      const ends = [...new Set([shares[0] ?? 0, shares.at(-1) ?? 0])].map((share) =>
        percent.format(share * 100),
      );
      return `${ends.join('\u2013')}\u00a0%`;
    },
    /** What a choice adds to the total; null where there is no price. */
    difference: (minor: number | null) =>
      minor === null ? null : minor === 0 ? t('option.same') : `${minor > 0 ? '+' : ''}${money(minor)}`,
  };
}
