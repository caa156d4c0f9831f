/** The worksheet before anything is entered: judged when the shop is built, so that the page holds it at once. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import type { Answer } from '../quote/answer.ts';
import {
  type OptionReport,
  optionReporter,
  REPORTED_CHOICES,
  type ReportedChoice,
} from '../quote/options.ts';
import { quote } from '../quote/quote.ts';
import { readEntries } from './readEntries.ts';

export type Reports = Readonly<Record<ReportedChoice, readonly OptionReport[]>>;

export interface Opening {
  /** Civil date that it was judged for. */
  readonly date: string;
  readonly answer: Answer;
  readonly reports: Reports;
}

/**
 * Answer and reports for an untouched worksheet of a frame; `report` may have the reports from elsewhere instead of
 * having them made. Throws when the shop itself makes the request faulty.
 */
export function openingOf(
  shop: Offer,
  frame: Frame,
  date: string,
  report = (make: () => Reports): Reports => make(),
): Opening {
  // Each package looks its frame up, which among thousands takes longer than to judge it.
  const offer = { ...shop, frames: [frame] };
  const { request } = readEntries({}, { frame, data: offer, date });
  const reply = quote(offer, request);
  if (!reply.ok)
    throw new Error(
      `The untouched worksheet of "${frame.id}" has no answer: ${JSON.stringify(reply.faults)}`,
    );
  const makeReports = () => {
    const reportOn = optionReporter(offer, request, 0);
    return Object.fromEntries(REPORTED_CHOICES.map((kind) => [kind, reportOn(kind)])) as unknown as Reports;
  };
  return { date, answer: reply.answer, reports: report(makeReports) };
}
