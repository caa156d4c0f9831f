/** The job ticket: what lies in the tray with the frame, from the order to the parcel. */
import { JOB_STATES } from '../../catalogue/workroom.ts';
import type { Eye } from '../../optics/types.ts';
import { qrDrawing } from '../drawing/qrCode.ts';
import { fitting, html, type Markup, type Part, shortened } from '../markup.ts';
import { workedLens } from '../workedLens.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { fitFacts, frameFacts, lensFacts, writtenPrescription } from './pairFacts.ts';
import { facts, lines, part, table } from './parts.ts';
import { powerRow, powerTable } from './powers.ts';
import { type Paper, pairId, sheet } from './sheet.ts';

/** The ticket of one pair. */
export function ticket(context: PaperContext, pair: PaperPair): Paper {
  const { job, t } = context;
  const title = t('ticket.title');
  return sheet(context, {
    id: pairId(context, 'ticket', pair.at),
    title,
    pair: pair.at,
    named: true,
    corner: qrDrawing(`${job.number} ${pair.at + 1}`, 26, t('ticket.qr')),
    body: html`<div class="columns">
${part(t('part.frame'), frameFacts(context, pair, false))}
${part(t('part.lenses'), lensFacts(context, pair))}
</div>
${prescriptionPart(context, pair)}
<div class="columns">
${part(t('part.fit'), fitFacts(context, pair))}
${part(t('part.people'), people(context, pair))}
</div>
${part(t('part.findings'), findings(context, pair))}
${job.order.notes !== '' && part(t('part.notes'), html`<p class="notes">${shortened(job.order.notes.replace(/\s*\n\s*/g, ' / '), NOTE_LETTERS)}</p>`)}
${part(t('part.progress'), progress(context))}`,
  });
}

function prescriptionPart(context: PaperContext, pair: PaperPair): Markup | null {
  const { t } = context;
  const written = writtenPrescription(context, pair);
  if (written === null) return null;
  const rows = (['right', 'left'] as const).flatMap((eye: Eye) => {
    const worked = workedLens(pair.judged, eye);
    return worked === null ? [] : [powerRow(t, t(`eye.${eye}`), eye, worked.ordered)];
  });
  return html`<div class="columns">${part(t('part.prescription'), written)}${
    rows.length > 0 && part(t('part.toMake'), powerTable(t, rows))
  }</div>`;
}

function people({ job, t, day }: PaperContext, { judged, at }: PaperPair): Markup {
  const { buyer } = job.order;
  const { wearer, issued, hasPrescription } = judged.situation;
  const paper = job.order.pairs[at]?.prescription ?? null;
  const prescriber = [paper?.prescriber.name ?? '', paper?.prescriber.place ?? ''].filter(
    (one) => one !== '',
  );
  return facts([
    [t('people.wearerIs'), t(`wearer.${wearer}`)],
    [t('people.buyer'), shortened(buyer.name, 32)],
    [t('people.phone'), shortened(buyer.phone, 30)],
    [t('people.email'), shortened(buyer.email, 36)],
    [
      t('people.prescriber'),
      hasPrescription && (shortened(prescriber.join(', '), 55) || t('people.notSaid')),
    ],
    [t('people.issued'), hasPrescription && (issued === null ? t('people.notSaid') : day(issued))],
    [t('people.written'), paper !== null && shortened(paper.written.replace(/\s+/g, ' '), 96)],
  ]);
}

/** Lines for findings, the buyer's note and long names together; a third of a line's letters fit in a column. */
const FREE_LINES = 15;
const FEWEST_FINDING_LINES = 5;
const NOTE_LETTERS = 210;

/** Lines of findings that there is room for beside what the buyer wrote. */
function findingLines({ job }: PaperContext, { at }: PaperPair): number {
  const { buyer, notes } = job.order;
  const pair = job.order.pairs[at];
  const { name = '', place = '' } = pair?.prescription?.prescriber ?? {};
  const written = pair?.prescription?.written ?? '';
  const wrapped = [buyer.name, buyer.email, `${name}, ${place}`, written, pair?.measuredNote ?? '']
    .map((text) => Math.min(3, Math.ceil(text.length / 34)) - 1)
    .reduce((sum, lines) => sum + Math.max(0, lines), 0);
  const note = Math.min(3, Math.ceil(notes.length / 70));
  return Math.max(FEWEST_FINDING_LINES, FREE_LINES - note - wrapped);
}

/** Stops first, then cautions, then notes, as far as there is room. */
function findings(context: PaperContext, pair: PaperPair): Markup {
  const { t } = context;
  const told = pair.judged.answer.findings;
  const { shown, more } = fitting(
    told.map(({ level, message }) => `${t(`level.${level}`)} ${message}`),
    findingLines(context, pair),
  );
  const items: Part[] = shown.map((sentence, at) => {
    const level = t(`level.${told[at]?.level ?? 'note'}`);
    return html`<b>${level}</b>${sentence.slice(level.length)}`;
  });
  if (more > 0) items.push(t('ticket.more', { count: more }));
  return lines(items, 'findings') ?? html`<p>${t('ticket.clear')}</p>`;
}

function progress({ t, offer }: PaperContext): Markup {
  const days = offer.workroom.lateAfterDays;
  return table(
    [t('progress.state'), t('progress.within'), t('progress.on'), t('progress.by'), t('progress.remark')],
    JOB_STATES.map((state) => [
      t(`state.${state}`),
      state === 'sent' ? '–' : String(days[state]),
      '',
      '',
      '',
    ]),
    'fill progress',
  );
}
