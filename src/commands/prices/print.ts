/** The report as text for a terminal. */
import { formatMoney } from '../../money/format.ts';
import type { Run } from './calendar.ts';
import type { Move } from './moves.ts';
import { printOverlaps } from './printOverlaps.ts';
import type { PricesReport } from './report.ts';

/** Rows of a table, each column as wide as its widest cell; `right` columns stand at their right edge. */
function table(rows: readonly (readonly string[])[], right: readonly number[]): string[] {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => (row[at] ?? '').length)));
  return rows.map((row) =>
    `  ${row.map((cell, at) => (right.includes(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0))).join('  ')}`.trimEnd(),
  );
}

function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

type Money = (minor: number | null) => string;

function moneyIn({ currency, digits, language }: PricesReport): Money {
  return (minor) => (minor === null ? '–' : formatMoney(minor, currency, digits, language));
}

function signed(minor: number | null, money: Money): string {
  return minor === null ? '' : `${minor > 0 ? '+' : ''}${money(minor)}`;
}

function moveRow(
  { oldMinor, newMinor, differenceMinor, percent, what, source }: Move,
  money: Money,
): string[] {
  const told = oldMinor === null ? 'new' : newMinor === null ? 'gone' : signed(differenceMinor, money);
  const share = percent === null ? '' : `${percent > 0 ? '+' : ''}${percent.toFixed(1)} %`;
  return [money(oldMinor), money(newMinor), told, share, `${what} (${source})`];
}

function printMoves({ against, notCompared, moves, terms, ...rest }: PricesReport, money: Money): string[] {
  if (notCompared !== null) return ['Prices: not compared.', `  ${notCompared}`];
  const commit = `commit ${against?.id.slice(0, 7)} of ${against?.date} (${against?.subject})`;
  if (moves.length === 0 && terms.length === 0) return [`Prices: none moves against ${commit}.`];
  const head = ['was', 'is', 'change', '', ''];
  return [
    `Prices: ${count(moves.length, 'line')} against ${commit}, the largest change first, judged for ${rest.date}.`,
    ...(moves.length === 0 ? [] : table([head, ...moves.map((one) => moveRow(one, money))], [0, 1, 2, 3])),
    ...terms.map(({ change, source, what }) => `  ${change}: ${what} (${source})`),
  ];
}

function printRun({ title, code, state, first, last }: Run): string[] {
  const at = (name: string, one: Run['first']) =>
    one === null ? `${name} open` : `${name} ${one.local} (${one.utc})`;
  return [
    `  ${title}${code === null ? '' : `, code ${code}`}: ${state}`,
    `    ${at('first instant', first)}`,
    `    ${at('last instant ', last)}`,
  ];
}

function printCalendar({ calendar, timeZone }: PricesReport): string[] {
  const { runs, gaps } = calendar;
  if (runs.length === 0) return ['Promotions: none.'];
  return [
    `Promotions, by the calendar of ${timeZone}:`,
    ...runs.flatMap(printRun),
    ...printOverlaps(calendar),
    ...gaps.map(({ from, to }) => `  No dated promotion from ${from} to ${to}.`),
  ];
}

/** At most so many of one kind; JSON and CSV have all. */
const MOST = 20;

function more(all: readonly unknown[]): string[] {
  return all.length > MOST ? [`  … and ${all.length - MOST} more: --json or --csv gives all.`] : [];
}

function printCosts({ underCost }: PricesReport, money: Money): string[] {
  if (underCost === null)
    return [
      'Costs: none are written down. npm run new -- costs begins the list, by which you are told what sells under cost.',
    ];
  const { losses, packages, unknown } = underCost;
  const rows = losses
    .slice(0, MOST)
    .map((loss) => [
      money(loss.takeMinor),
      money(loss.costMinor),
      signed(loss.takeMinor - loss.costMinor, money),
      [
        `${loss.frame} ${loss.size} ${loss.colourway}, ${loss.design}, ${loss.material}, ${loss.tint}, ${loss.coating}`,
        loss.stock === null ? '' : `, ready-made ${loss.stock}`,
        loss.pairs === 1 ? '' : `, ${loss.pairs} pairs`,
        `, from ${loss.from}`,
        loss.codes.length === 0 ? '' : `, with ${loss.codes.join(' and ')}`,
      ].join(''),
    ]);
  return [
    losses.length === 0
      ? 'Costs: nothing sells under cost.'
      : `Costs: ${count(packages, 'package')} of ${count(losses.length, 'frame')} would sell under cost; the worst of each:`,
    ...(rows.length === 0 ? [] : table([['keeps', 'costs', '', ''], ...rows], [0, 1, 2])),
    ...more(losses),
    ...(unknown.length === 0
      ? []
      : [
          `  Without a cost, and so counted as costing nothing: ${unknown.slice(0, MOST).join(', ')}${unknown.length > MOST ? ', …' : ''}.`,
        ]),
  ];
}

function printEndings({ oddPrices }: PricesReport, money: Money): string[] {
  if (oddPrices === null) return [];
  if (oddPrices.length === 0) return ['Endings: every price ends as the shop has it.', ''];
  const rows = oddPrices.slice(0, MOST).map(({ what, source, minor, belowMinor, aboveMinor }) => {
    const near = [belowMinor, aboveMinor].flatMap((one) => (one === null ? [] : [money(one)])).join(' or ');
    return [money(minor), near, `${what} (${source})`];
  });
  return [
    `Endings: ${count(oddPrices.length, 'price')} ${oddPrices.length === 1 ? 'does' : 'do'} not end as the shop has it.`,
    ...table([['is', 'near', ''], ...rows], [0]),
    ...more(oddPrices),
    '',
  ];
}

/** The text, without a line end after the last line. */
export function printReport(report: PricesReport): string {
  const money = moneyIn(report);
  return [
    `${report.shop}`,
    '',
    ...printMoves(report, money),
    '',
    ...printCalendar(report),
    '',
    ...printEndings(report, money),
    ...printCosts(report, money),
  ].join('\n');
}
