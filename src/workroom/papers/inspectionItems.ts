/** The tables of an inspection sheet: items of each lens with right and left side by side, then items of the pair. */
import type { Inspection } from '../../optics/tolerance/inspect.ts';
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import { html, type Markup, type Part } from '../markup.ts';
import type { PaperContext } from './context.ts';
import { figure, limitWords, outcomeText, unitKey } from './inspectionWords.ts';
import { type Say, table } from './parts.ts';

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

const orderedCells = (t: Say, item: InspectedItem): readonly Part[] => [
  figure(item.ordered, item),
  limitText(t, item),
];

/** Ordered, limit, measured and outcome; the decisive item stands out. */
function filledCells(t: Say, item: InspectedItem, isDecisive: boolean): readonly Part[] {
  const outcome = outcomeText(t, item);
  const strong = item.outcome === 'fail' || isDecisive;
  return [...orderedCells(t, item), figure(item.measured, item), strong ? html`<b>${outcome}</b>` : outcome];
}

/** The limit with the band that it is from, and whether it is from memory. */
function limitText(t: Say, item: InspectedItem): Part {
  const { size, memory, band } = limitWords(t, item);
  return html`${size}${memory !== '' && html` <em>${memory}</em>`}${band !== '' && html` <small>${band}</small>`}`;
}
