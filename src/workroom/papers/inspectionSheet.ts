/** The inspection sheet: to be filled in at the bench, or filled with what was measured and how it came out. */
import { inspectPair } from '../inspection/inspectPair.ts';
import type { PairInspection } from '../inspection/pairInspection.ts';
import { perfectPair } from '../inspection/perfect.ts';
import { html, type Markup, shortened } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { itemTables } from './inspectionItems.ts';
import { readings } from './inspectionReadings.ts';
import { cureTexts, decisiveText, howRead, verdictKey } from './inspectionWords.ts';
import { frameName } from './pairFacts.ts';
import { facts, lines, part } from './parts.ts';
import { type Paper, pairId, sheet } from './sheet.ts';

/** Sentences on what would bring a pair in that fit on the page. */
const MOST_CURES = 5;

/** The inspection sheet of one pair. */
export function inspectionSheet(context: PaperContext, pair: PaperPair): Paper {
  const { t, offer } = context;
  const filled = pair.inspection;
  const perfect = perfectPair(pair.judged);
  const shown = filled ?? (perfect && inspectPair(pair.judged, perfect, offer));
  return sheet(context, {
    id: pairId(context, 'inspection', pair.at),
    title: t('inspection.title'),
    pair: pair.at,
    named: true,
    body:
      shown === null
        ? html`<p>${t('noLens')}</p>`
        : html`${heading(context, pair, shown)}
${itemTables(context, shown, filled !== null, readings(context, pair))}
${filled === null ? part(t('inspection.how'), html`<p class="key">${howRead(t, pair.judged)}</p>`) : outcome(context, pair, filled)}
${alignment(context, filled)}
${signature(context, filled)}`,
  });
}

function heading(context: PaperContext, pair: PaperPair, { profile, inspection }: PairInspection): Markup {
  const { t, offer } = context;
  const { design, material } = pair.judged.situation;
  const memory = inspection.items.some(({ basis, limit }) => basis === 'from memory' && limit !== null);
  const checked = offer.workroom.tolerance.memoryChecked;
  const thinning = pair.judged.situation.design.corridor?.thinningPrismShare ?? 0;
  return html`${facts([
    [t('part.frame'), `${frameName(context, pair)}; ${design.name}, ${material.name}`],
    [
      t('inspection.profile'),
      html`<b>${profile.title}</b> (${t(`basis.${profile.basis.replaceAll(' ', '-')}`)}) ${profile.note}`,
    ],
    [t('inspection.thinning'), thinning > 0 && t('inspection.thinningSays')],
  ])}${memory && html`<p class="warning">${t(checked ? 'inspection.memoryChecked' : 'inspection.memory')}</p>`}`;
}

function outcome({ t }: PaperContext, pair: PaperPair, found: PairInspection): Markup {
  const verdict = verdictKey(found);
  const { items, alignment } = cureTexts(t, pair.judged, found);
  const more = items.length - MOST_CURES;
  const told = [
    ...items.slice(0, MOST_CURES),
    ...(more > 0 ? [t('ticket.more', { count: more })] : []),
    ...(alignment === null ? [] : [alignment]),
  ];
  return html`<div class="verdict ${verdict}"><p><b>${t(`inspection.${verdict}`)}</b> ${decisiveText(t, found)}</p>${lines(told)}</div>`;
}

function alignment({ t, offer }: PaperContext, filled: PairInspection | null): Markup | null {
  const { alignment: list } = offer.workroom;
  if (list.length === 0) return null;
  const rows = list.map((line, at) => {
    const holds = filled === null ? null : filled.measured.alignment[at] === true;
    return html`<li class="${holds === null ? '' : holds ? 'done' : 'undone'}">${shortened(line, 95)}</li>`;
  });
  return part(t('inspection.alignment'), html`<ul class="boxes numbered two">${rows}</ul>`);
}

function signature({ t, day }: PaperContext, filled: PairInspection | null): Markup {
  if (filled === null) return html`<p class="sign">${t('inspection.sign')}</p>`;
  const { by, on, remarks } = filled.measured;
  return html`<p>${t('inspection.signed', { by: shortened(by, 40), day: day(on) })}${remarks !== undefined && html` ${shortened(remarks.replace(/\s+/g, ' '), 110)}`}</p>`;
}
