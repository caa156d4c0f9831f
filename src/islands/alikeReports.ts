/**
 * What is reported on the options of an untouched worksheet: hundreds of frames have one of a few dozen reports, which
 * is kept once, with its text.
 */
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Reports } from '../configurator/opening.ts';

/** Text for a script element, in which only `<` can end it. */
export const scriptText = (data: unknown): string => JSON.stringify(data).replaceAll('<', '\\u003c');

const texts = new WeakMap<Reports, string>();
const byText = new Map<string, Reports>();

/** The first reports that were the same as these. */
function alikeReports(reports: Reports): Reports {
  const json = JSON.stringify(reports);
  const known = byText.get(json) ?? reports;
  if (known === reports) {
    byText.set(json, reports);
    texts.set(reports, json.replaceAll('<', '\\u003c'));
  }
  return known;
}

/** Text for a script element of reports that are kept. */
export const reportsText = (reports: Reports): string => texts.get(reports) ?? scriptText(reports);

/** A shop in one language: what its frames report, and what it says where the shop's own language says this. */
interface Reported {
  readonly ofFrames: Map<string, Reports>;
  readonly forOwn: Map<Reports, Reports>;
}
const kept = new WeakMap<Catalogue, Reported>();

function keptFor(catalogue: Catalogue): Reported {
  const known = kept.get(catalogue) ?? { ofFrames: new Map(), forOwn: new Map() };
  kept.set(catalogue, known);
  return known;
}

/**
 * What is reported on a frame in one of the shop's languages. Frames that report the same in the shop's own language do
 * so in every other, so that another language judges one frame of each kind alone.
 */
export function reportsIn(
  catalogue: Catalogue,
  own: Catalogue,
  frameId: string,
  make: () => Reports,
): Reports {
  if (catalogue === own) {
    const reports = alikeReports(make());
    keptFor(own).ofFrames.set(frameId, reports);
    return reports;
  }
  const said = keptFor(own).ofFrames.get(frameId);
  const { forOwn } = keptFor(catalogue);
  const reports = (said && forOwn.get(said)) ?? alikeReports(make());
  if (said) forOwn.set(said, reports);
  return reports;
}
