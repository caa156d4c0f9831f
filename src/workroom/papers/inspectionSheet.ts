/** The inspection sheet: to be filled in at the bench, or filled with what was measured and how it came out. */
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import { dioptres, millimetres } from '../figures.ts';
import { type CureOf, inspectPair, type PairInspection } from '../inspection/inspectPair.ts';
import { perfectPair } from '../inspection/perfect.ts';
import { html, type Markup, type Part, shortened } from '../markup.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { frameName } from './pairFacts.ts';
import { facts, lines, type Paper, pairId, part, sheet, table } from './sheet.ts';

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
${items(context, shown, filled !== null)}
${filled !== null && outcome(context, pair, filled)}
${part(t('inspection.how'), html`<p class="key">${how(context, pair)}</p>`)}
${alignment(context, filled)}
${signed(context, filled)}`,
  });
}

function heading(context: PaperContext, pair: PaperPair, { profile, inspection }: PairInspection): Markup {
  const { t, offer } = context;
  const { design, material } = pair.judged.situation;
  const memory = inspection.items.some(({ basis, limit }) => basis === 'from memory' && limit !== null);
  const checked = offer.workroom.tolerance.memoryChecked;
  const thinning = pair.judged.situation.design.corridor?.thinningPrismShare ?? 0;
  return html`${facts([
    [t('frame.frame'), frameName(context, pair)],
    [t('part.lenses'), `${design.name}, ${material.name}`],
    [
      t('inspection.profile'),
      html`<b>${profile.title}</b> (${t(`basis.${profile.basis.replaceAll(' ', '-')}`)}) ${profile.note}`,
    ],
    [t('inspection.thinning'), thinning > 0 && t('inspection.thinningSays')],
  ])}${memory && html`<p class="warning">${t(checked ? 'inspection.memoryChecked' : 'inspection.memory')}</p>`}`;
}

/** Figure of an item in its unit. */
function figure(value: number | null, { unit, item }: InspectedItem): string {
  if (value === null) return '';
  if (unit === 'degrees') return `${Math.round(value)}°`;
  if (unit === 'D' && item !== 'warpage') return dioptres(value);
  return millimetres(value);
}

function limitText(t: PaperContext['t'], item: InspectedItem): Part {
  const { limit, unit, band, basis } = item;
  if (limit === null) return t('inspection.noLimit');
  const size = unit === 'degrees' ? `±${limit}°` : `±${limit.toFixed(2)}`;
  const mark = basis === 'from memory' ? html` <em>${t('inspection.byMemory')}</em>` : null;
  const over = band === null || band.over === null ? '' : t('inspection.over', { over: band.over });
  const upTo = band === null || band.upTo === Infinity ? '' : t('inspection.upTo', { upTo: band.upTo });
  const where = [over, upTo].filter((one) => one !== '').join(' ');
  const quantity = band === null ? '' : t(`quantity.${band.quantity.replaceAll(' ', '-')}`);
  return html`${size}${mark}${where !== '' && html` <small>${quantity} ${where}</small>`}`;
}

/** A blank sheet leaves the place for what is measured; its limits are those of a perfect pair. */
function items({ t }: PaperContext, { inspection }: PairInspection, isFilled: boolean): Markup {
  const heads = ['item', 'eye', 'ordered', 'limit', 'measured', 'off', 'outcome'].map((key) =>
    t(`inspection.${key}`),
  );
  const rows = inspection.items.map((item) => {
    const decisive = isFilled && item === inspection.decisive;
    const told = t(`outcome.${item.outcome.replaceAll(' ', '-')}`);
    const name = html`${t(`item.${item.item}`)} <small>${t(`unit.${item.unit.replaceAll(' ', '-')}`)}</small>`;
    return [
      decisive ? html`<b>${name}</b>` : name,
      t(`eye.${item.eye}`),
      figure(item.ordered, item),
      limitText(t, item),
      isFilled ? figure(item.measured, item) : '',
      isFilled && item.deviation !== null ? figure(item.deviation, item) : '',
      isFilled ? (item.outcome === 'fail' ? html`<b>${told}</b>` : told) : '',
    ];
  });
  return table(heads, rows, isFilled ? 'items' : 'items fill');
}

function outcome({ t }: PaperContext, pair: PaperPair, found: PairInspection): Markup {
  const { inspection, passed, cures, misaligned } = found;
  const { decisive } = inspection;
  const verdict = passed === null ? 'open' : passed ? 'passed' : 'failed';
  const cut = pair.judged.situation.stock === null ? 'surfaced' : 'stock';
  const cure = ({ item, cure, by }: CureOf) =>
    t(cure === 'recut' ? `cure.recut-${cut}` : `cure.${cure}`, {
      item: t(`item.${item.item}`),
      eye: t(`eye.${item.eye}`),
      by: by === null ? '' : figure(by, item).replace('+', ''),
      unit: item.unit === 'degrees' ? '' : t(`unit.${item.unit.replaceAll(' ', '-')}`),
    });
  const told = [
    ...cures.slice(0, 8).map(cure),
    ...(misaligned.length > 0 ? [t('cure.alignment', { lines: misaligned.join(', ') })] : []),
  ];
  const by =
    decisive && t('inspection.decisive', { item: t(`item.${decisive.item}`), eye: t(`eye.${decisive.eye}`) });
  return html`<div class="verdict ${verdict}"><p><b>${t(`inspection.${verdict}`)}</b> ${by}</p>${lines(told)}</div>`;
}

/** Where each figure is read, by design. */
function how({ t }: PaperContext, { judged }: PaperPair): string {
  const { design, tint } = judged.situation;
  const kind = design.corridor !== null ? 'progressive' : design.segment !== null ? 'bifocal' : 'single';
  return [t(`how.${kind}`), t('how.any'), ...(tint?.polarised ? [t('how.polarised')] : [])].join(' ');
}

function alignment({ t, offer }: PaperContext, filled: PairInspection | null): Markup | null {
  const { alignment: list } = offer.workroom;
  if (list.length === 0) return null;
  const rows = list.map((line, at) => {
    const holds = filled?.measured.alignment[at];
    return html`${line}${holds !== undefined && html` <b>${t(holds ? 'outcome.pass' : 'outcome.fail')}</b>`}`;
  });
  return part(t('inspection.alignment'), lines(rows, 'boxes numbered'));
}

function signed({ t, day }: PaperContext, filled: PairInspection | null): Markup {
  if (filled === null) return html`<p class="sign">${t('inspection.sign')}</p>`;
  const { by, on, remarks } = filled.measured;
  return html`<p>${t('inspection.signed', { by: shortened(by, 60), day: day(on) })}${remarks !== undefined && html` ${shortened(remarks, 300)}`}</p>`;
}
