/** The options of one kind as rows: what each is, whether it fits, why not, and what it changes. */
import type { OptionText } from '../catalogue/limit.ts';
import type { LensChoice, OptionReport } from '../quote/options.ts';
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
  readonly reasons: readonly string[];
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
export const optionsOf = (data: ShopData, kind: LensChoice): readonly OptionText[] =>
  ({ design: data.designs, material: data.materials, tint: data.tints, coating: data.coatings })[kind];

/** One row an option, in the shop's order. */
export function optionRows(
  data: ShopData,
  kind: LensChoice,
  reports: readonly OptionReport[],
): readonly OptionRow[] {
  return optionsOf(data, kind).map(({ id, name, summary }) => {
    const report = reports.find((one) => one.id === id);
    return { id, name, summary, ...declared(data, kind, id), ...judged(report) };
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
  report: OptionReport | undefined,
): Omit<OptionRow, 'id' | 'name' | 'summary' | 'colours' | 'shares'> {
  if (report === undefined)
    return { mark: 'open', reasons: [], thickestMm: null, massG: null, differenceMinor: null };
  const findings = report.findings.filter(({ rule }) => !ASKING.includes(rule));
  const telling = findings.filter(({ level }) => level !== 'note');
  const { thickestMm, massG, differenceMinor } = report;
  const stopped = telling.some(({ level }) => level === 'stop');
  const open = thickestMm === null;
  return {
    mark: stopped ? 'refused' : open ? 'open' : telling.length > 0 ? 'care' : 'fits',
    reasons: telling.map(({ message }) => message),
    thickestMm,
    massG,
    differenceMinor,
  };
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
