/**
 * The front of a frame in one colourway, as SVG content in mm (see frameDrawing.ts): for pages, which style its
 * classes, and for pictures, which bring a style sheet of their own. Ids begin with `uid`.
 */
import type { Colourway } from '../../catalogue/frame.ts';
import type { FrameShape } from './frameDrawing.ts';
import { mottlePattern } from './mottle.ts';
import { mottles, type Paint, paints } from './paint.ts';

const MIRROR = ' transform="scale(-1 1)"';
const SIDES = ['', MIRROR];

function behind(
  { pad, end, lens, thread }: FrameShape,
  temples: Paint,
  lensColour: string | undefined,
): string {
  const { x, y, width, height } = end.stub;
  const stub = `<rect class="part-edge" x="${x}" y="${y}" width="${width}" height="${height}" rx=".6" fill="${temples.fill}"></rect>`;
  const rest = pad
    ? `<path class="pad-arm" d="${pad.arm}"></path><ellipse class="pad" cx="${pad.cx}" cy="${pad.cy}" rx="${pad.rx}" ry="${pad.ry}" transform="rotate(${pad.leanDeg} ${pad.cx} ${pad.cy})"></ellipse>`
    : '';
  const glass = lensColour
    ? `<path class="lens lens-tinted" d="${lens}" fill="${lensColour}"></path>`
    : `<path class="lens" d="${lens}"></path>`;
  const held = thread ? `<path class="thread" d="${thread}"></path>` : '';
  const side = stub + rest + glass + held;
  return SIDES.map((mirror) => `<g${mirror}>${side}</g>`).join('');
}

/** The content of an `svg`; the colour of the lenses is `#rrggbb`, undefined: clear. */
export function frontSvg(
  shape: FrameShape,
  colourway: Colourway,
  uid: string,
  lensColour: string | undefined,
): string {
  const parts = paints(colourway, uid);
  const { front, bridge, temples } = parts;
  const rim = shape.rim ? `<path d="${shape.rim}" fill-rule="evenodd"></path>` : '';
  const rims = SIDES.map((mirror) => `<use href="#${uid}-f"${mirror}></use>`).join('');
  const bar = `<path d="${shape.bridge}"></path>`;
  const painted = ({ fill, opacity }: Paint, content: string) =>
    `<g fill="${fill}"${opacity === 1 ? '' : ` opacity="${opacity}"`}>${content}</g>`;
  const seenThrough = front.opacity < 1 || bridge.opacity < 1;
  return [
    `<defs>${mottles(parts).map(mottlePattern).join('')}<g id="${uid}-f">${rim}<path d="${shape.end.path}"></path></g></defs>`,
    behind(shape, temples, lensColour),
    `<g class="part-edge">${rims}${bar}</g>`,
    seenThrough ? `<g class="part-ground">${rims}${bar}</g>` : '',
    painted(bridge, bar),
    painted(front, rims),
    ...shape.holes.flatMap(({ cx, cy, r }) =>
      [cx, -cx].map((x) => `<circle class="hole" cx="${x}" cy="${cy}" r="${r}"></circle>`),
    ),
  ].join('');
}
