/**
 * What is reported on the options of an untouched worksheet: hundreds of frames have one of a few dozen reports, which
 * is kept once, with its text.
 */
import type { Reports } from '../configurator/opening.ts';

/** Text for a script element, in which only `<` can end it. */
export const scriptText = (data: unknown): string => JSON.stringify(data).replaceAll('<', '\\u003c');

export interface AlikeReports {
  readonly reports: Reports;
  /** Their text for a script element. */
  readonly text: string;
}

const kept = new Map<string, AlikeReports>();

/** The first reports that were the same as these. */
export function alikeReports(reports: Reports): AlikeReports {
  const json = JSON.stringify(reports);
  const known = kept.get(json) ?? { reports, text: json.replaceAll('<', '\\u003c') };
  kept.set(json, known);
  return known;
}
