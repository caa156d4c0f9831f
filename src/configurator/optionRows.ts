/** The options of one kind as rows: what each is, whether it fits, why not, and what it changes. */
import type { OptionText } from '../catalogue/limit.ts';
import { say } from '../catalogue/words.ts';
import type { Finding } from '../quote/answer.ts';
import type { LensChoice, OptionReport } from '../quote/options.ts';
import { foldEyes } from './foldEyes.ts';
import type { ShopData } from './shopData.ts';

/** `open`: nothing stands against it, but no lens could be computed yet. */
export type Mark = 'fits' | 'care' | 'refused' | 'open';

export interface OptionRow {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
  /** Colours of a tint's states, for a chip; empty for other options. */
  readonly colours: readonly string[];
  /** Light that a tint lets through in its states, or that a coated face reflects: 0 to 1, from least to most. */
  readonly shares: readonly number[];
  readonly mark: Mark;
  /** Sentences that tell this option from the present one: what stops it, or what only it would have to be minded for. */
  readonly reasons: readonly string[];
  /** Titles of what is to be minded with it as with the present one, which the ticket tells in full. */
  readonly minds: readonly string[];
  /** Thickest edge of both lenses, mm. */
  readonly thickestMm: number | null;
  /** Both lenses, g. */
  readonly massG: number | null;
  /** What choosing it adds to the total, minor units; null where there is no price. */
  readonly differenceMinor: number | null;
}

/** Rules that ask for an entry say nothing against an option. */
const ASKING = ['prescription-incomplete', 'measurement-missing'];

/** The kinds in the order of the sheet. A copy of the engine's list, which would bring the engine with it. */
export const LENS_KINDS = ['design', 'material', 'tint', 'coating'] as const satisfies readonly LensChoice[];

/** The shop's options of a kind. */
const optionsOf = (data: ShopData, kind: LensChoice): readonly OptionText[] =>
  ({ design: data.designs, material: data.materials, tint: data.tints, coating: data.coatings })[kind];

/** One row an option, in the shop's order. */
export function optionRows(
  data: ShopData,
  kind: LensChoice,
  reports: readonly OptionReport[],
): readonly OptionRow[] {
  const present = new Set(
    reports.find(({ chosen }) => chosen)?.findings.map(({ rule, level }) => `${rule} ${level}`),
  );
  const isTold = ({ rule, level }: Finding) => present.has(`${rule} ${level}`);
  return optionsOf(data, kind).map(({ id, name, summary }) => {
    const report = reports.find((one) => one.id === id);
    return { id, name, summary, ...declared(data, kind, id), ...judged(data, report, isTold) };
  });
}

/** What is known of an option whatever the prescription. */
function declared(data: ShopData, kind: LensChoice, id: string): Pick<OptionRow, 'colours' | 'shares'> {
  if (kind === 'tint') {
    const states = data.tints.find((one) => one.id === id)?.states ?? [];
    const shares = states.map(({ transmittance }) => transmittance).sort((one, other) => one - other);
    return { colours: states.map(({ colour }) => colour), shares };
  }
  const left = kind === 'coating' ? data.coatings.find((one) => one.id === id)?.residualReflectance : null;
  return { colours: [], shares: left === null || left === undefined ? [] : [left] };
}

function judged(
  { words }: ShopData,
  report: OptionReport | undefined,
  isTold: (finding: Finding) => boolean,
): Omit<OptionRow, 'id' | 'name' | 'summary' | 'colours' | 'shares'> {
  if (report === undefined)
    return { mark: 'open', reasons: [], minds: [], thickestMm: null, massG: null, differenceMinor: null };
  const { thickestMm, massG, differenceMinor } = report;
  const findings = foldEyes(words, report.findings).filter(({ rule }) => !ASKING.includes(rule));
  const stops = findings.filter(({ level }) => level === 'stop');
  const cautions = findings.filter(({ level }) => level === 'caution');
  const telling = stops.length > 0 ? stops : cautions.filter((finding) => !isTold(finding));
  const minded = stops.length > 0 ? [] : cautions.filter(isTold);
  const titles = minded.map(({ rule }) => say(words, `rule.${rule}.title`));
  return {
    mark: markOf(stops.length, cautions.length, thickestMm),
    reasons: telling.map(({ message }) => message),
    minds: [...new Set(titles)],
    thickestMm,
    massG,
    differenceMinor,
  };
}

function markOf(stops: number, cautions: number, thickestMm: number | null): Mark {
  if (stops > 0) return 'refused';
  if (thickestMm === null) return 'open';
  return cautions > 0 ? 'care' : 'fits';
}

/** Which figures tell the rows apart; a column of the same figure, or of none, says nothing. */
export function tellingColumns(rows: readonly OptionRow[]): {
  readonly thickest: boolean;
  readonly mass: boolean;
  readonly shares: boolean;
} {
  const differ = (values: readonly (number | null)[]) =>
    new Set(values.filter((value) => value !== null)).size > 1;
  return {
    thickest: differ(rows.map(({ thickestMm }) => thickestMm)),
    mass: differ(rows.map(({ massG }) => massG)),
    shares: rows.some(({ shares }) => shares.length > 0),
  };
}
