/** Figures of a column as its head announces them: without a unit, which stands in the head. */
import type { TradeColumn } from '../configurator/tradeColumns.ts';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';

/** A writer of figures; several become the least to the most, none a dash. */
export function useTradeFigures(): (key: TradeColumn, values: readonly number[]) => string {
  const { t } = useSheet();
  const { fixed, difference } = useFigures();
  return (key, values) => {
    if (values.length === 0) return t('figure.none');
    if (key === 'price') return difference(values[0] ?? null) ?? t('figure.none');
    const digits = key === 'mass' || key === 'sharp' || key === 'light' ? 1 : 2;
    const ends = [Math.min(...values), Math.max(...values)].map((value) => fixed(value, digits));
    return [...new Set(ends)].join('\u2013');
  };
}
