/** The figures of options side by side: which columns tell them apart, and which option is best and worst in each. */
import type { TradeOff } from '../quote/tradeOff.ts';
import type { OptionRow } from './optionRows.ts';

export const TRADE_COLUMNS = [
  'price',
  'thickest',
  'beyond',
  'centre',
  'mass',
  'sharp',
  'fringes',
  'reflects',
  'light',
] as const;
export type TradeColumn = (typeof TRADE_COLUMNS)[number];

/** How an option stands in a column among those that can be made. */
export type Rank = 'best' | 'worst' | null;

export interface Cell {
  /** Figures to show: none where not known, several where a tint has states. */
  readonly values: readonly number[];
  readonly rank: Rank;
}

export interface Column {
  readonly key: TradeColumn;
  /** One a row. */
  readonly cells: readonly Cell[];
}

export interface Trade {
  readonly columns: readonly Column[];
  /** Figures that are the same for every option that has them. */
  readonly alike: readonly { readonly key: TradeColumn; readonly values: readonly number[] }[];
}

/** Which way is better; light is neither. */
const BETTER: Readonly<Record<TradeColumn, 'less' | 'more' | null>> = {
  price: 'less',
  thickest: 'less',
  beyond: 'less',
  centre: 'less',
  mass: 'less',
  sharp: 'more',
  fringes: 'less',
  reflects: 'less',
  light: null,
};

const OF: Readonly<Record<Exclude<TradeColumn, 'price' | 'light'>, (one: TradeOff) => number | null>> = {
  thickest: ({ thickestMm }) => thickestMm,
  beyond: ({ beyondRimMm }) => beyondRimMm,
  centre: ({ centreMm }) => centreMm,
  mass: ({ massG }) => massG,
  sharp: ({ sharpDeg }) => sharpDeg,
  fringes: ({ fringesPrism }) => fringesPrism,
  reflects: ({ reflectedPercent }) => reflectedPercent,
};

function valuesOf({ differenceMinor, tradeOff }: OptionRow, key: TradeColumn): readonly number[] {
  if (key === 'light') return tradeOff?.lightPercents ?? [];
  const value = key === 'price' ? differenceMinor : tradeOff && OF[key](tradeOff);
  return value === null ? [] : [value];
}

/** The columns that tell the rows apart, the price always among them, and what is alike in all. */
export function tradeOf(rows: readonly OptionRow[]): Trade {
  const columns: Column[] = [];
  const alike: { key: TradeColumn; values: readonly number[] }[] = [];
  for (const key of TRADE_COLUMNS) {
    const values = rows.map((row) => valuesOf(row, key));
    const known = values.filter((one) => one.length > 0);
    const differ = new Set(known.map(String)).size > 1;
    if (key === 'price' || differ) columns.push({ key, cells: ranked(rows, values, BETTER[key]) });
    else if (known[0] !== undefined) alike.push({ key, values: known[0] });
  }
  return { columns, alike };
}

/**
 * Best and worst among the options that can be made, where they differ. A few may share a place; one that most of
 * them share tells nothing of any.
 */
function ranked(
  rows: readonly OptionRow[],
  values: readonly (readonly number[])[],
  better: 'less' | 'more' | null,
): readonly Cell[] {
  const able = values.flatMap((one, at) => (rows[at]?.mark === 'refused' ? [] : one.slice(0, 1)));
  const [least, most] = [Math.min(...able), Math.max(...able)];
  const ends: readonly [Rank, Rank] = better === 'less' ? ['best', 'worst'] : ['worst', 'best'];
  const tells = (end: number) => 2 * able.filter((value) => value === end).length <= able.length;
  return values.map((one, at) => {
    const [value] = one;
    const counts = better !== null && value !== undefined && rows[at]?.mark !== 'refused' && least < most;
    if (!counts || (value !== least && value !== most) || !tells(value)) return { values: one, rank: null };
    return { values: one, rank: value === least ? ends[0] : ends[1] };
  });
}
