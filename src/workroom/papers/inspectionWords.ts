/** What an inspection says of an item: figures in their unit, the limit with its band, the outcome, the cure. */
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import { dioptres, millimetres } from '../figures.ts';
import type { CureOf, PairInspection } from '../inspection/pairInspection.ts';
import type { Say } from './parts.ts';

/** A figure of an item as its unit is written. */
export function figure(value: number | null, { unit, item }: InspectedItem): string {
  if (value === null) return '';
  if (unit === 'degrees') return `${Math.round(value)}°`;
  if (unit === 'D' && item !== 'warpage') return dioptres(value);
  return millimetres(value);
}

/** Key of an item's unit. */
export const unitKey = ({ unit }: InspectedItem): string => `unit.${unit.replaceAll(' ', '-')}`;

/** An item's outcome with its deviation. */
export function outcomeText(t: Say, item: InspectedItem): string {
  const told = t(`outcome.${item.outcome.replaceAll(' ', '-')}`);
  return item.deviation === null || item.deviation === 0 ? told : `${told}, ${deviation(item)}`;
}

/** A deviation, always with its sign. */
function deviation(item: InspectedItem): string {
  const text = figure(item.deviation, item);
  return (item.deviation ?? 0) > 0 && !text.startsWith('+') ? `+${text}` : text;
}

/** The limit, whether it is from memory, and the band that it is from; `band` is empty where there is one limit for all. */
export function limitWords(t: Say, { limit, unit, band, basis }: InspectedItem) {
  if (limit === null) return { size: t('inspection.noLimit'), memory: '', band: '' };
  const size = unit === 'degrees' ? `±${limit}°` : `±${limit.toFixed(2)}`;
  const memory = basis === 'from memory' ? t('inspection.byMemory') : '';
  if (band === null || (band.over === null && band.upTo === Number.POSITIVE_INFINITY))
    return { size, memory, band: '' };
  const where = [
    t(`quantity.${band.quantity.replaceAll(' ', '-')}`),
    band.over !== null && t('inspection.over', { over: band.over }),
    band.upTo !== Number.POSITIVE_INFINITY && t('inspection.upTo', { upTo: band.upTo }),
  ];
  return { size, memory, band: where.filter((one) => one !== false).join(' ') };
}

/** Key of how a pair came out, below `inspection`. */
export const verdictKey = ({ passed }: PairInspection): 'open' | 'passed' | 'failed' =>
  passed === null ? 'open' : passed ? 'passed' : 'failed';

/** The item that decides, as a sentence; empty where nothing was judged. */
export const decisiveText = (t: Say, { inspection: { decisive } }: PairInspection): string =>
  decisive === null
    ? ''
    : t('inspection.decisive', { item: t(`item.${decisive.item}`), eye: t(`eye.${decisive.eye}`) });

/** What would bring the pair in, a sentence each; the lines of the alignment list last. */
export function cureTexts(
  t: Say,
  { situation }: JudgedPair,
  { cures, misaligned }: PairInspection,
): { readonly items: readonly string[]; readonly alignment: string | null } {
  const cut = situation.stock === null ? 'surfaced' : 'stock';
  const told = ({ item, cure, by }: CureOf) =>
    t(cure === 'recut' ? `cure.recut-${cut}` : `cure.${cure}`, {
      item: t(`item.${item.item}`),
      eye: t(`eye.${item.eye}`),
      by: by === null ? '' : figure(by, item).replace('+', ''),
      unit: item.unit === 'degrees' ? '' : t(unitKey(item)),
    });
  const alignment = misaligned.length > 0 ? t('cure.alignment', { lines: misaligned.join(', ') }) : null;
  return { items: cures.map(told), alignment };
}

/** Where each figure is read, by design. */
export function howRead(t: Say, { situation }: JudgedPair): string {
  const { design, tint } = situation;
  const kind = design.corridor !== null ? 'progressive' : design.segment !== null ? 'bifocal' : 'single';
  return [t(`how.${kind}`), t('how.any'), ...(tint?.polarised ? [t('how.polarised')] : [])].join(' ');
}
