/** Every paper of a job, in the order in which the workroom uses them. */
import type { Job } from './job.ts';
import { escapeText } from './markup.ts';
import type { WorkroomOffer } from './openJob.ts';
import { careNotes } from './papers/care.ts';
import { checkSheet } from './papers/checkSheet.ts';
import type { PaperOptions } from './papers/context.ts';
import { inspectionSheet } from './papers/inspectionSheet.ts';
import { layoutSheet } from './papers/layoutSheet.ts';
import { lensOrderSheet } from './papers/lensOrderSheet.ts';
import { paperContext } from './papers/makeContext.ts';
import { parcelSlip } from './papers/parcelSlip.ts';
import { receipt } from './papers/receipt.ts';
import { lensRecord } from './papers/record.ts';
import type { Paper } from './papers/sheet.ts';
import { ticket } from './papers/ticket.ts';
import { PRINT_STYLE } from './printStyle.ts';

/**
 * The papers of a job. Each prints to one page of A4 or US Letter with `PRINT_STYLE`; all text from the order is
 * escaped. A pair that cannot be read any more has no papers: the check sheet says why.
 */
export function papersOf(job: Job, offer: WorkroomOffer, options: PaperOptions = {}): readonly Paper[] {
  const context = paperContext(job, offer, options);
  const bill = receipt(context);
  return [
    checkSheet(context),
    ...context.pairs.map((pair) => ticket(context, pair)),
    ...context.pairs.map((pair) => lensOrderSheet(context, pair)),
    ...context.pairs.map((pair) => layoutSheet(context, pair)),
    ...context.pairs.map((pair) => inspectionSheet(context, pair)),
    ...context.pairs.map((pair) => lensRecord(context, pair)),
    ...(bill === null ? [] : [bill]),
    careNotes(context),
    parcelSlip(context),
  ];
}

/** Papers as one HTML document to print, without script and without anything fetched. */
export function printable(papers: readonly Pick<Paper, 'html'>[], title: string, language: string): string {
  return `<!doctype html>
<html lang="${escapeText(language)}"><head><meta charset="utf-8"><meta name="robots" content="noindex">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escapeText(title)}</title><style>${PRINT_STYLE}</style></head>
<body>${papers.map(({ html }) => html).join('\n')}</body></html>
`;
}
