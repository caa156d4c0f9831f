/** The options of one kind as rows: what each is, whether it fits, why not, and what it gains and costs. */
import type { OptionText } from '../catalogue/limit.ts';
import { say } from '../catalogue/words.ts';
import type { Finding } from '../quote/answer.ts';
import type { OptionReport, ReportedChoice } from '../quote/options.ts';
import type { TradeOff } from '../quote/tradeOff.ts';
import { foldEyes } from './foldEyes.ts';
import type { ShopData } from './shopData.ts';
import { isShopsWork } from './shopsWork.ts';

/** `open`: nothing stands against it, but no lens could be computed yet. */
export type Mark = 'fits' | 'care' | 'refused' | 'open';

export interface OptionRow {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
  /** Colours of a tint's states, for a chip; empty for other options. */
  readonly colours: readonly string[];
  /** Names of a tint's states, where it has several. */
  readonly states: readonly string[];
  readonly mark: Mark;
  /** Sentences that tell this option from the present one: what stops it, or what only it would have to be minded for. */
  readonly reasons: readonly string[];
  /** Sentences of what the shop sees to by itself with this option alone. */
  readonly ours: readonly string[];
  /** What it still asks for before it can be judged. */
  readonly needs: readonly string[];
  /** Titles of what is to be minded with it as with the present one, which the ticket tells in full. */
  readonly minds: readonly string[];
  /** Figures of both lenses with it; null while nothing was reported. */
  readonly tradeOff: TradeOff | null;
  /** What choosing it adds to the total, minor units; null where there is no price. */
  readonly differenceMinor: number | null;
  /** What of the other chosen things it does not go with; null where it goes with all. */
  readonly excludes: string | null;
  /** How it compares with the present option; null where there is nothing to compare. */
  readonly claim: string | null;
}

/** Rules that ask for an entry say nothing against an option. */
const ASKING = ['prescription-incomplete', 'measurement-missing'];

/** The shop's options of a kind; blanks are named by the worksheet. */
function optionsOf(
  data: ShopData,
  kind: ReportedChoice,
): readonly Pick<OptionText, 'id' | 'name' | 'summary'>[] {
  if (kind !== 'blank')
    return { design: data.designs, material: data.materials, tint: data.tints, coating: data.coatings }[kind];
  const text = (key: string) => say(data.words, `worksheet.option.blank.${key}`);
  return ['auto', 'stock', 'surfaced'].map((id) => ({ id, name: text(id), summary: text(`${id}Text`) }));
}

/** What an option is called. */
export const optionName = (data: ShopData, kind: ReportedChoice, id: string): string =>
  optionsOf(data, kind).find((one) => one.id === id)?.name ?? id;

/** One row an option, in the shop's order. */
export function optionRows(
  data: ShopData,
  kind: ReportedChoice,
  reports: readonly OptionReport[],
): readonly OptionRow[] {
  const present = reports.find(({ chosen }) => chosen);
  const told = new Set(present?.findings.map(({ rule, level }) => `${rule} ${level}`));
  const isTold = ({ rule, level }: Finding) => told.has(`${rule} ${level}`);
  return optionsOf(data, kind).map(({ id, name, summary }) => {
    const report = reports.find((one) => one.id === id);
    const states = kind === 'tint' ? (data.tints.find((one) => one.id === id)?.states ?? []) : [];
    return {
      id,
      name,
      summary,
      colours: states.map(({ colour }) => colour),
      states: states.length > 1 ? states.map((state) => state.name) : [],
      ...judged(data, report, isTold),
    };
  });
}

function judged(
  { words }: ShopData,
  report: OptionReport | undefined,
  isTold: (finding: Finding) => boolean,
): Pick<
  OptionRow,
  'mark' | 'reasons' | 'ours' | 'needs' | 'minds' | 'tradeOff' | 'differenceMinor' | 'excludes' | 'claim'
> {
  if (report === undefined)
    return {
      mark: 'open',
      reasons: [],
      ours: [],
      needs: [],
      minds: [],
      tradeOff: null,
      differenceMinor: null,
      excludes: null,
      claim: null,
    };
  const { thickestMm, tradeOff, differenceMinor, excludes, claim } = report;
  const folded = foldEyes(words, report.findings);
  const findings = folded.filter(({ rule }) => !ASKING.includes(rule));
  const stops = findings.filter(({ level }) => level === 'stop');
  const all = findings.filter(({ level }) => level === 'caution');
  const [ours, cautions] = [all.filter(isShopsWork), all.filter((finding) => !isShopsWork(finding))];
  const telling = stops.length > 0 ? stops : cautions.filter((finding) => !isTold(finding));
  const minded = stops.length > 0 ? [] : cautions.filter(isTold);
  const titles = minded.map(({ rule }) => say(words, `rule.${rule}.title`));
  return {
    mark: markOf(stops.length, cautions.length, thickestMm),
    reasons: telling.flatMap(({ message, remedy }) => (remedy ? [message, remedy.message] : message)),
    ours: stops.length > 0 ? [] : ours.filter((one) => !isTold(one)).map(({ message }) => message),
    needs: folded.flatMap(({ rule, message }) => (ASKING.includes(rule) ? [message] : [])),
    minds: [...new Set(titles)],
    tradeOff,
    differenceMinor,
    excludes,
    claim,
  };
}

function markOf(stops: number, cautions: number, thickestMm: number | null): Mark {
  if (stops > 0) return 'refused';
  if (thickestMm === null) return 'open';
  return cautions > 0 ? 'care' : 'fits';
}
