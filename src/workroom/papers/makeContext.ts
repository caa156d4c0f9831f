/** Makes the context of a job's papers: the job is opened and what was measured is inspected, once for all of them. */
import { say } from '../../catalogue/words.ts';
import { formatMoney } from '../../money/format.ts';
import { inspectPair } from '../inspection/inspectPair.ts';
import type { Job } from '../job.ts';
import { openJob, type WorkroomOffer } from '../openJob.ts';
import type { PaperContext, PaperOptions } from './context.ts';

/** The context of a job's papers. */
export function paperContext(job: Job, offer: WorkroomOffer, options: PaperOptions): PaperContext {
  const { currency, currencyDigits, language } = offer.shop;
  const opened = openJob(job, offer);
  const dates = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });
  return {
    job,
    offer,
    opened,
    options,
    pairs: opened.pairs.flatMap((judged, at) => {
      if (judged === null) return [];
      const measured = options.measured?.[at] ?? null;
      return [{ judged, at, inspection: measured && inspectPair(judged, measured, offer) }];
    }),
    t: (key, slots) => say(offer.words, `workroom.${key}`, slots),
    money: (minor) => formatMoney(minor, currency, currencyDigits, language),
    day: (civilDate) => {
      const day = new Date(`${civilDate}T00:00:00Z`);
      return Number.isNaN(day.getTime()) ? civilDate : dates.format(day);
    },
  };
}
