/** The tables of an inspection sheet: items of each lens with right and left side by side, then items of the pair. */
import type { Inspection } from '../../optics/tolerance/inspect.ts';
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import { dioptres, millimetres } from '../figures.ts';
import { html, type Markup, type Part } from '../markup.ts';
import type { PaperContext } from './context.ts';
import { type Say, table } from './parts.ts';

/** A figure of an item as its unit is written. */
export function figure(value: number | null, { unit, item }: InspectedItem): string {
  if (value === null) return '';
  if (unit === 'degrees') return `${Math.round(value)}°`;
  if (unit === 'D' && item !== 'warpage') return dioptres(value);
  return millimetres(value);
}

/** The tables, with another one `beside` that of the pair. An empty sheet leaves the place for what is measured; its limits are those of a perfect pair. */
export function itemTables(
  { t }: PaperContext,
  { inspection }: { readonly inspection: Inspection },
  isFilled: boolean,
  beside: Part,
): Markup {
  const { items, decisive } = inspection;
  const cells = (item: InspectedItem | undefined): readonly Part[] => {
    if (item === undefined) return ['', '', '', ''];
    return isFilled ? filledCells(t, item, item === decisive) : [...orderedCells(t, item), '', ''];
  };
  const ofEyes = items.filter(({ eye }) => eye !== 'both');
  const names = [...new Set(ofEyes.map(({ item }) => item))];
  const byEye = names.map((name) => {
    const own = ofEyes.filter(({ item }) => item === name);
    const side = (eye: 'right' | 'left') => cells(own.find((item) => item.eye === eye));
    return [label(t, own[0]), ...side('right'), ...side('left')];
  });
  const ofPair = items.filter(({ eye }) => eye === 'both').map((item) => [label(t, item), ...cells(item)]);
  const [ordered = '', ...rest] = ['ordered', 'limit', 'measured', 'outcome'].map((key) =>
    t(`inspection.${key}`),
  );
  const side = (eye: 'right' | 'left') => [`${t(`eye.${eye}`)}, ${ordered}`, ...rest];
  const name = isFilled ? 'items' : 'items fill';
  const eyeTable = table([t('inspection.item'), ...side('right'), ...side('left')], byEye, `${name} by-eye`);
  const pairTable =
    ofPair.length > 0 && table([t('inspection.ofPair'), ordered, ...rest], ofPair, `${name} of-pair`);
  return html`${eyeTable}<div class="columns">${pairTable}${beside}</div>`;
}

function label(t: Say, item: InspectedItem | undefined): Part {
  return item === undefined ? null : html`${t(`item.${item.item}`)} <small>${t(unitKey(item))}</small>`;
}

/** Key of an item's unit. */
export const unitKey = ({ unit }: InspectedItem): string => `unit.${unit.replaceAll(' ', '-')}`;

const orderedCells = (t: Say, item: InspectedItem): readonly Part[] => [
  figure(item.ordered, item),
  limitText(t, item),
];

/** Ordered, limit, measured and outcome; the decisive item stands out. */
function filledCells(t: Say, item: InspectedItem, isDecisive: boolean): readonly Part[] {
  const told = t(`outcome.${item.outcome.replaceAll(' ', '-')}`);
  const outcome = item.deviation === null || item.deviation === 0 ? told : `${told}, ${deviation(item)}`;
  const strong = item.outcome === 'fail' || isDecisive;
  return [...orderedCells(t, item), figure(item.measured, item), strong ? html`<b>${outcome}</b>` : outcome];
}

/** A deviation, always with its sign. */
function deviation(item: InspectedItem): string {
  const text = figure(item.deviation, item);
  return (item.deviation ?? 0) > 0 && !text.startsWith('+') ? `+${text}` : text;
}

/** The limit with the band that it is from, and whether it is from memory. */
function limitText(t: Say, { limit, unit, band, basis }: InspectedItem): Part {
  if (limit === null) return t('inspection.noLimit');
  const size = unit === 'degrees' ? `±${limit}°` : `±${limit.toFixed(2)}`;
  const mark = basis === 'from memory' && html` <em>${t('inspection.byMemory')}</em>`;
  if (band === null || (band.over === null && band.upTo === Number.POSITIVE_INFINITY))
    return html`${size}${mark}`;
  const where = [
    t(`quantity.${band.quantity.replaceAll(' ', '-')}`),
    band.over !== null && t('inspection.over', { over: band.over }),
    band.upTo !== Number.POSITIVE_INFINITY && t('inspection.upTo', { upTo: band.upTo }),
  ];
  return html`${size}${mark} <small>${where.filter((one) => one !== false).join(' ')}</small>`;
}
