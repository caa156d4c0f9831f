/** The curves of drawing 3: millimetres up, degrees from the nose across. */
import { num } from '../../components/drawing/svgPath.ts';
import { EYES } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import type { EdgePlace, EdgeView } from '../../quote/view/edge.ts';
import type { Tell } from './tell.ts';

const WIDTH = 180;
const HEIGHT = 76;
const QUARTERS = ['nasal', 'above', 'temporal', 'below', 'nasal'] as const;

const xAt = (deg: number) => (deg / 360) * WIDTH;

const EXTREMES = ['thickest', 'thinnest'] as const;

export function EdgeChart(props: { readonly view: EdgeView; readonly tell: Tell; readonly uid: string }) {
  const { view, tell, uid } = props;
  const { d } = tell;
  const { rimDepthMm } = view;
  // Two figures, one above the other, find room above the highest curve.
  const most = Math.ceil(Math.max(view.right.thickest.mm, view.left.thickest.mm, rimDepthMm) * 1.18);
  const yAt = (thicknessMm: number) => HEIGHT * (1 - thicknessMm / most);
  const every = most > 12 ? 5 : most > 6 ? 2 : 1;
  const lines = Array.from({ length: Math.floor(most / every) + 1 }, (_, i) => i * every);
  return (
    <svg
      class="dw dw-edge"
      viewBox={`-16 -8 ${WIDTH + 24} ${HEIGHT + 24}`}
      role="img"
      aria-labelledby={`${uid}-t`}
    >
      <title id={`${uid}-t`}>{d('edge.title')}</title>
      {rimDepthMm > 0 && (
        <g class="dw-rim-depth">
          <rect x="0" y={num(yAt(rimDepthMm))} width={WIDTH} height={num(HEIGHT - yAt(rimDepthMm))} />
          <path d={`M0 ${num(yAt(rimDepthMm))}H${WIDTH}`} />
          <text class="dw-middle" x={num(xAt(clearDeg(view)))} y={num(yAt(rimDepthMm) + 5.4)}>
            {d('edge.rimDepth', { mm: tell.mm(rimDepthMm, 1) })}
          </text>
        </g>
      )}
      <path class="dw-grid" d={lines.map((line) => `M0 ${num(yAt(line))}H${WIDTH}`).join('')} />
      <path class="dw-grid" d={QUARTERS.map((_, i) => `M${num(xAt(90 * i))} 0V${HEIGHT + 2}`).join('')} />
      {lines.map((line) => (
        <text key={line} class="dw-end" x="-2" y={num(yAt(line) + 1.8)}>
          {tell.number(line, 0)}
        </text>
      ))}
      <text class="dw-end dw-quiet" x="-2" y={num(yAt(most) - 3)}>
        {d('edge.unit')}
      </text>
      {QUARTERS.map((place, i) => (
        <text
          key={`${place}${90 * i}`}
          class={`${i === 4 ? 'dw-end' : i === 0 ? 'dw-start' : 'dw-middle'}`}
          x={num(xAt(90 * i))}
          y={HEIGHT + 8}
        >
          {d(`edge.${place}`)}
        </text>
      ))}
      {QUARTERS.map((place, i) => (
        <text
          key={`${place}${90 * i}`}
          class={`dw-quiet ${i === 4 ? 'dw-end' : i === 0 ? 'dw-start' : 'dw-middle'}`}
          x={num(xAt(90 * i))}
          y={HEIGHT + 14.5}
        >
          {tell.deg(90 * i)}
        </text>
      ))}
      {EYES.map((eye) => (
        <g key={eye} class={`dw-curve-${eye}`}>
          <path d={curve(view[eye].mm, view.stepDeg, yAt)} />
          {EXTREMES.map((kind) => (
            <Extreme
              key={kind}
              eye={eye}
              place={view[eye][kind]}
              y={yAt(view[eye][kind].mm)}
              textY={figureY(view, kind, eye, yAt)}
              tell={tell}
            />
          ))}
        </g>
      ))}
    </svg>
  );
}

/** Where on the line of the rim, off its ends, the curves leave most room for its name. */
function clearDeg({ right, left, stepDeg, rimDepthMm }: EdgeView): number {
  const room = (deg: number) => {
    const i = Math.round(deg / stepDeg);
    return Math.min(...[right, left].map(({ mm }) => Math.abs((mm[i] ?? 0) - rimDepthMm)));
  };
  return [120, 180, 240].reduce((one, other) => (room(other) > room(one) ? other : one));
}

const curve = (mm: readonly number[], stepDeg: number, yAt: (mm: number) => number) =>
  `M${[...mm, mm[0] as number].map((one, i) => `${num(xAt(i * stepDeg))} ${num(yAt(one))}`).join('L')}`;

/** A disc for the right eye, a square for the left. */
export const Dot = ({ eye, x, y }: { readonly eye: Eye; readonly x: number; readonly y: number }) =>
  eye === 'right' ? (
    <circle class="dw-spot" cx={num(x)} cy={num(y)} r="1.5" />
  ) : (
    <rect class="dw-spot dw-hollow" x={num(x - 1.5)} y={num(y - 1.5)} width="3" height="3" />
  );

/** Figures nearer than this would stand on each other. */
const NEAR = 34;

/**
 * Height of the line that a figure stands on, clear of both curves: above a peak and below a valley. Where the eyes'
 * places lie side by side, two peaks have their figures one above the other, over the higher curve; of two valleys the
 * higher has its figure above.
 */
function figureY(
  view: EdgeView,
  kind: (typeof EXTREMES)[number],
  eye: Eye,
  yAt: (mm: number) => number,
): number {
  const own = view[eye][kind];
  const other = view[eye === 'right' ? 'left' : 'right'][kind];
  const near = Math.abs(xAt(own.fromNoseDeg) - xAt(other.fromNoseDeg)) < NEAR;
  const upper = own.mm > other.mm || (own.mm === other.mm && eye === 'right');
  if (kind === 'thickest') return near && !upper ? yAt(other.mm) - 9 : yAt(own.mm) - 3;
  const below = yAt(own.mm) + 7;
  return (near && upper) || below > HEIGHT - 1 ? yAt(own.mm) - 3 : below;
}

function Extreme(props: {
  readonly eye: Eye;
  readonly place: EdgePlace;
  readonly y: number;
  readonly textY: number;
  readonly tell: Tell;
}) {
  const { eye, place, y, textY, tell } = props;
  const x = xAt(place.fromNoseDeg);
  const side = x < 14 ? 'dw-start' : x > WIDTH - 14 ? 'dw-end' : 'dw-middle';
  return (
    <>
      <Dot eye={eye} x={x} y={y} />
      <text class={side} x={num(x)} y={num(textY)}>
        {tell.letter(eye)} {tell.number(place.mm)}
      </text>
    </>
  );
}
