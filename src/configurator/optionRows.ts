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
    return { id, name, summary, ...judged(report) };
  });
}

function judged(report: OptionReport | undefined): Omit<OptionRow, 'id' | 'name' | 'summary'> {
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
