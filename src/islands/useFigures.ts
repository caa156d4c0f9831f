/** Figures with their units in the shop's language. */
import type { Shop } from '../catalogue/shop.ts';
import type { Worksheet } from '../configurator/worksheet.ts';
import { formatMoney } from '../money/format.ts';
import { useSheet } from './sheet.ts';

const kept = new Map<string, Intl.NumberFormat>();

/** A number with at least and at most so many decimals. Formatters are kept: making one is slow. */
function decimal(language: string, least: number, most: number, value: number): string {
  const name = `${language} ${least} ${most}`;
  let format = kept.get(name);
  if (format === undefined) {
    format = new Intl.NumberFormat(language, { minimumFractionDigits: least, maximumFractionDigits: most });
    kept.set(name, format);
  }
  return format.format(value);
}

/** What figures are written with. */
interface Writing {
  readonly t: Worksheet['t'];
  readonly shop: Pick<Shop, 'language' | 'currency' | 'currencyDigits'>;
}

/** Figures of this page's worksheet. */
export function useFigures(): Figures {
  const { t, data } = useSheet();
  return figuresIn({ t, shop: data.shop });
}

export type Figures = ReturnType<typeof figuresIn>;

/** Figures with the units and in the language of a shop. */
export function figuresIn({ t, shop: { language, currency, currencyDigits } }: Writing) {
  const fixed = (value: number, digits: number) => decimal(language, digits, digits, value);
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
    fixed,
    /** Percent to 0.1. */
    percent: (value: number) => `${fixed(value, 1)}\u00a0%`,
    /** What a choice adds to the total; null where there is no price. */
    difference: (minor: number | null) =>
      minor === null ? null : minor === 0 ? t('option.same') : `${minor > 0 ? '+' : ''}${money(minor)}`,
  };
}
