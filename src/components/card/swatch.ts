/** A chip of a colourway's material with its name: the front, and a strip of the temples where they differ. */
import type { Colourway } from '../../catalogue/frame.ts';
import { mottlePattern } from '../drawing/mottle.ts';
import { mottles, type Paint, paints } from '../drawing/paint.ts';
import { markup } from './markup.ts';

const CHIP =
  'M3 1H19a2 2 0 0 1 2 2V11a2 2 0 0 1-2 2H3a2 2 0 0 1-2-2V3a2 2 0 0 1 2-2ZM4.4 5.4a1.6 1.6 0 1 0 0 3.2 1.6 1.6 0 0 0 0-3.2Z';
const STRIP = 'M14.6 1.35H19A1.65 1.65 0 0 1 20.65 3V11A1.65 1.65 0 0 1 19 12.65H14.6Z';

const filled = ({ fill, opacity }: Paint) =>
  `fill="${fill}"${opacity === 1 ? '' : ` fill-opacity="${opacity}"`}`;

/** The chip; its ids begin with `uid`, which is the only one of its kind on a page. */
export function swatch(colourway: Colourway, uid: string): string {
  const parts = paints(colourway, uid);
  const { front, temples } = parts;
  const patterns = mottles(parts).map(mottlePattern).join('');
  const strip = temples.fill === front.fill ? '' : `<path ${filled(temples)} d="${STRIP}"></path>`;
  return [
    '<span class="swatch"><svg viewBox="0 0 22 14" aria-hidden="true">',
    patterns && `<defs>${patterns}</defs>`,
    `<path class="part-edge" ${filled(front)} fill-rule="evenodd" d="${CHIP}"></path>${strip}</svg> `,
    `${markup(colourway.name)}</span>`,
  ].join('');
}
