/**
 * Pictures for links to the shop's pages, 1200 by 630 pixels as Open Graph readers show them: frames to scale on the
 * shop's squared paper, as SVG without text. Colours are those of styles/tokens.css by day.
 */
import type { Colourway, Frame, FrameSize } from '../catalogue/frame.ts';
import { dimensions } from '../components/drawing/dimension.ts';
import { frameShape } from '../components/drawing/frameDrawing.ts';
import { frontSvg } from '../components/drawing/frontSvg.ts';
import { num } from '../components/drawing/svgPath.ts';
import { strokeNumber } from './strokeFigures.ts';

export const SHARE_WIDTH = 1200;
export const SHARE_HEIGHT = 630;

/** One scale for all, so that a frame that looks wider is wider; only what would not fit is drawn smaller. */
const PX_PER_MM = 6.6;
const SIDE_PX = 70;

const STYLE = [
  '.grid{stroke:#22439b;stroke-opacity:.15;stroke-width:.25}',
  '.part-edge{stroke:#1b2430;stroke-opacity:.6;stroke-width:.7;stroke-linejoin:round}',
  '.part-ground,.hole{fill:#f9f6ec}',
  '.lens{fill:#b9cbd8;fill-opacity:.25;stroke:#1b2430;stroke-opacity:.6;stroke-width:.35}',
  '.thread{fill:none;stroke:#1b2430;stroke-width:.5;stroke-dasharray:.2 1;stroke-linecap:round}',
  '.pad{fill:#b9cbd8;fill-opacity:.25;stroke:#1b2430;stroke-opacity:.6;stroke-width:.4}',
  '.pad-arm{fill:none;stroke:#535b62;stroke-width:.7}',
  '.hole{stroke:#1b2430;stroke-width:.5}',
  '.dimension{fill:none;stroke:#22439b;stroke-width:.3}',
  '.extension{stroke-width:.2}',
  '.arrow{fill:#22439b;stroke:none}',
  '.figure{stroke-width:.7;stroke-linecap:round;stroke-linejoin:round}',
].join('');

/** What is drawn of a frame. */
export interface Shown {
  readonly frame: Frame;
  readonly size: FrameSize;
  readonly colourway: Colourway;
  /** `#rrggbb`; undefined: clear. */
  readonly lensColour: string | undefined;
}

function sheet(scale: number, upMm: number, content: string): string {
  const [width, height] = [SHARE_WIDTH / scale, SHARE_HEIGHT / scale];
  const [left, top] = [-width / 2, -height / 2 + upMm];
  const lines = (from: number, length: number) =>
    Array.from({ length: Math.floor(length / 10) + 1 }, (_, k) => (Math.ceil(from / 10) + k) * 10);
  const grid = [
    ...lines(left, width).map((x) => `M${x} ${num(top)}v${num(height)}`),
    ...lines(top, height).map((y) => `M${num(left)} ${y}h${num(width)}`),
  ].join('');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${SHARE_WIDTH}" height="${SHARE_HEIGHT}"`,
    ` viewBox="${num(left)} ${num(top)} ${num(width)} ${num(height)}"><style>${STYLE}</style>`,
    `<rect x="${num(left)}" y="${num(top)}" width="${num(width)}" height="${num(height)}" fill="#f9f6ec"/>`,
    `<path class="grid" d="${grid}"/>${content}</svg>`,
  ].join('');
}

/** One frame with A, B and DBL in whole mm. */
export function frameShareSvg({ frame, size, colourway, lensColour }: Shown): string {
  const shape = frameShape(frame, size);
  const scale = Math.min(
    PX_PER_MM,
    (SHARE_WIDTH - 2 * SIDE_PX) / (2 * (shape.halfWidthMm + 10)),
    (SHARE_HEIGHT - SIDE_PX) / (2 * shape.halfHeightMm + 26),
  );
  const marks = dimensions(size, shape).map(({ line, arrows, extensions, mm, text }) => {
    const turn = text.upright ? ' rotate(-90)' : '';
    const figure = `<g class="figure" transform="translate(${text.x} ${num(text.y - (text.upright ? 0 : 2))})${turn} translate(0 ${text.upright ? -2 : 0})">${strokeNumber(mm, 4.4)}</g>`;
    return `<g class="dimension"><path class="extension" d="${extensions}"/><path d="${line}"/><path class="arrow" d="${arrows}"/>${figure}</g>`;
  });
  return sheet(scale, 1, frontSvg(shape, colourway, 'f', lensColour) + marks.join(''));
}

/** Up to six frames in two rows, at one scale. */
export function shopShareSvg(all: readonly Shown[]): string {
  const six = all.slice(0, 6).map((shown) => ({ shown, shape: frameShape(shown.frame, shown.size) }));
  const columns = Math.min(3, six.length);
  const rows = Math.ceil(six.length / 3);
  const widest = Math.max(...six.map(({ shape }) => 2 * shape.halfWidthMm)) + 14;
  const highest = Math.max(...six.map(({ shape }) => 2 * shape.halfHeightMm)) + 14;
  const scale = Math.min(
    PX_PER_MM,
    (SHARE_WIDTH - SIDE_PX) / (columns * widest),
    (SHARE_HEIGHT - SIDE_PX) / (rows * highest),
  );
  const step = Math.max(highest, (0.8 * SHARE_HEIGHT) / (scale * rows));
  const fronts = six.map(({ shown, shape }, index) => {
    const inRow = Math.min(3, six.length - 3 * Math.floor(index / 3));
    const x = ((index % 3) - (inRow - 1) / 2) * widest;
    const y = (Math.floor(index / 3) - (rows - 1) / 2) * step;
    const front = frontSvg(shape, shown.colourway, `f${index}`, shown.lensColour);
    return `<g transform="translate(${num(x)} ${num(y)})">${front}</g>`;
  });
  return sheet(scale, 0, fronts.join(''));
}
