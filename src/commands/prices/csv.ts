/** The report as one table of comma-separated values, for a spreadsheet: the first column says which part. */
import { toDecimal } from '../../money/decimal.ts';
import type { PricesReport } from './report.ts';

const COLUMNS = [
  'part',
  'source',
  'what',
  'old',
  'new',
  'difference',
  'percent',
  'from',
  'to',
  'note',
] as const;
type Row = Readonly<Partial<Record<(typeof COLUMNS)[number], string | number | null>>>;

/** A text that a spreadsheet would run as a formula is told to be a text. */
function cell(column: string, value: string | number | null | undefined): string {
  const text = String(value ?? '');
  const isText = column === 'source' || column === 'what' || column === 'note';
  const safe = isText && /^[=+\-@\t]/.test(text) ? `'${text}` : text;
  return /[",\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function rowsOf(report: PricesReport): Row[] {
  const amount = (minor: number | null) => (minor === null ? null : toDecimal(minor, report.digits));
  const { calendar, underCost, oddPrices } = report;
  return [
    ...report.moves.map(({ kind, source, what, oldMinor, newMinor, differenceMinor, percent }) => ({
      ...{ part: kind, source, what, percent },
      ...{ old: amount(oldMinor), new: amount(newMinor), difference: amount(differenceMinor) },
    })),
    ...report.terms.map(({ change, source, what }) => ({ part: 'terms', source, what, note: change })),
    ...calendar.runs.map(({ id, title, first, last, state, code }) => ({
      ...{ part: 'promotion', source: `promotions/${id}`, what: title },
      ...{ from: first?.local ?? null, to: last?.local ?? null },
      note: code === null ? state : `${state}, code ${code}`,
    })),
    ...calendar.overlaps.map(({ promotions, from, to, joins, refusing }) => ({
      ...{ part: 'overlap', what: promotions.join(' and '), from, to },
      note: refusing === null ? joins : `${joins}: ${refusing} does not name the other`,
    })),
    ...calendar.gaps.map(({ from, to }) => ({ part: 'gap', what: 'no dated promotion', from, to })),
    ...(underCost?.losses ?? []).map((loss) => ({
      ...{ part: 'under cost', source: `frames/${loss.frame}`, from: loss.from },
      what: [loss.size, loss.colourway, loss.design, loss.material, loss.tint, loss.coating].join(' '),
      ...{ old: amount(loss.costMinor), new: amount(loss.takeMinor) },
      difference: amount(loss.takeMinor - loss.costMinor),
      note: ['old is cost, new is what is kept', ...loss.codes.map((code) => `code ${code}`)].join('; '),
    })),
    ...(oddPrices ?? []).map(({ source, what, minor, belowMinor, aboveMinor }) => ({
      ...{ part: 'ending', source, what, old: amount(minor) },
      note: [belowMinor, aboveMinor].flatMap((one) => amount(one) ?? []).join(' or '),
    })),
  ];
}

/** The table, with a line of names first and a line end after the last row. */
export function csvOf(report: PricesReport): string {
  const lines = rowsOf(report).map((row) => COLUMNS.map((column) => cell(column, row[column])).join(','));
  return `${[COLUMNS.join(','), ...lines].join('\n')}\n`;
}
