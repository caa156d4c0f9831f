/** A printed rule: measured with a real one, it tells whether the printer kept the scale. */
import { html, type Markup } from '../markup.ts';
import { num } from './path.ts';

const WIDTH_MM = 104;
const HEIGHT_MM = 10;

/** A rule of 100 mm with its sentence beside it. */
export function printedRule(says: string): Markup {
  const ticks = Array.from({ length: 101 }, (_, mm) => {
    const length = mm % 10 === 0 ? 4 : mm % 5 === 0 ? 2.8 : 1.6;
    return `M${num(mm)} 0v${num(length)}`;
  }).join('');
  const figures = Array.from({ length: 11 }, (_, cm) => {
    return html`<text class="tick" x="${cm * 10}" y="7.2" text-anchor="middle">${cm * 10}</text>`;
  });
  return html`<figure class="rule"><svg width="${WIDTH_MM}mm" height="${HEIGHT_MM}mm" viewBox="-2 -0.5 ${WIDTH_MM} ${HEIGHT_MM}" role="img" aria-label="${says}"><path class="fine" d="M0 0h100${ticks}"/>${figures}</svg><figcaption>${says}</figcaption></figure>`;
}
