/** Drawing 3: edge thickness of both lenses round the rim, told from the nose over the brow. */
import { num } from '../../components/drawing/svgPath.ts';
import { EYES } from '../../configurator/fields.ts';
import type { EdgePlace, EdgeView, EyeEdge } from '../../quote/view/edge.ts';
import { EyeTable, Figure, Key, rowOf } from './Figure.tsx';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: EdgeView;
  readonly tell: Tell;
  readonly uid: string;
}

const WIDTH = 180;
const HEIGHT = 76;
const QUARTERS = ['nasal', 'above', 'temporal', 'below', 'nasal'] as const;

const xAt = (deg: number) => (deg / 360) * WIDTH;

export function EdgeDrawing({ view, tell, uid }: Props) {
  const { d, mm } = tell;
  const { rimDepthMm } = view;
  const most = Math.ceil(Math.max(view.right.thickest.mm, view.left.thickest.mm, rimDepthMm) + 0.6);
  const yAt = (thicknessMm: number) => HEIGHT * (1 - thicknessMm / most);
  const every = most > 12 ? 5 : most > 6 ? 2 : 1;
  const lines = Array.from({ length: Math.floor(most / every) + 1 }, (_, i) => i * every);
  const rows = [
    rowOf(
      d('edge.thickest'),
      view,
      ({ thickest }, eye) => `${mm(thickest.mm)}, ${tell.place(eye, thickest.atDeg)}`,
    ),
    rowOf(
      d('edge.thinnest'),
      view,
      ({ thinnest }, eye) => `${mm(thinnest.mm)}, ${tell.place(eye, thinnest.atDeg)}`,
    ),
    rowOf(d('edge.rim'), view, () => (rimDepthMm > 0 ? mm(rimDepthMm) : null)),
    rowOf(d('edge.hidden'), view, (edge) => (rimDepthMm > 0 ? hidden(edge, rimDepthMm, d) : null)),
  ];
  const notes = [
    rimDepthMm > 0 ? null : d('edge.noRim'),
    view.estimate && d(`estimate.${view.estimate}`),
  ].filter((note) => note !== null);
  const marks = EYES.map((eye) => ({
    name: tell.eye(eye),
    mark: (
      <g class={`dw-curve-${eye}`}>
        <path d="M-8 0H8" />
        <Dot eye={eye} x={0} y={0} />
      </g>
    ),
  }));
  return (
    <Figure uid={uid} title={d('edge.title')} lead={d('edge.lead')} notes={notes}>
      <svg
        class="dw dw-edge"
        viewBox={`-16 -8 ${WIDTH + 24} ${HEIGHT + 24}`}
        role="img"
        aria-labelledby={`${uid}-t ${uid}-s`}
      >
        <title id={`${uid}-t`}>{d('edge.title')}</title>
        <desc id={`${uid}-s`}>
          {rows.map(({ label, right, left }) => `${label}: ${right ?? '–'}, ${left ?? '–'}`).join('; ')}
        </desc>
        {rimDepthMm > 0 && (
          <g class="dw-rim-depth">
            <rect x="0" y={num(yAt(rimDepthMm))} width={WIDTH} height={num(HEIGHT - yAt(rimDepthMm))} />
            <path d={`M0 ${num(yAt(rimDepthMm))}H${WIDTH}`} />
            <text class="dw-label dw-end" x={WIDTH - 1} y={num(yAt(rimDepthMm) + 5.4)}>
              {d('edge.rimDepth', { mm: tell.mm(rimDepthMm, 1) })}
            </text>
          </g>
        )}
        <path class="dw-grid" d={lines.map((line) => `M0 ${num(yAt(line))}H${WIDTH}`).join('')} />
        <path class="dw-grid" d={QUARTERS.map((_, i) => `M${num(xAt(90 * i))} 0V${HEIGHT + 2}`).join('')} />
        {lines.map((line) => (
          <text key={line} class="dw-label dw-end" x="-2" y={num(yAt(line) + 1.8)}>
            {tell.number(line, 0)}
          </text>
        ))}
        <text class="dw-label dw-end dw-quiet" x="-2" y={num(yAt(most) - 3)}>
          {d('edge.unit')}
        </text>
        {QUARTERS.map((place, i) => (
          <text
            key={`${place}${90 * i}`}
            class={`dw-label ${i === 4 ? 'dw-end' : i === 0 ? 'dw-start' : 'dw-middle'}`}
            x={num(xAt(90 * i))}
            y={HEIGHT + 8}
          >
            {d(`edge.${place}`)}
          </text>
        ))}
        {QUARTERS.map((place, i) => (
          <text
            key={`${place}${90 * i}`}
            class={`dw-label dw-quiet ${i === 4 ? 'dw-end' : i === 0 ? 'dw-start' : 'dw-middle'}`}
            x={num(xAt(90 * i))}
            y={HEIGHT + 14.5}
          >
            {tell.deg(90 * i)}
          </text>
        ))}
        {EYES.map((eye) => (
          <g key={eye} class={`dw-curve-${eye}`}>
            <path d={curve(view[eye].mm, view.stepDeg, yAt)} />
            {[view[eye].thickest, view[eye].thinnest].map((place) => (
              <Place key={place.mm} eye={eye} place={place} y={yAt(place.mm)} tell={tell} />
            ))}
          </g>
        ))}
      </svg>
      <Key marks={marks} />
      <EyeTable caption={d('edge.figures')} rows={rows} tell={tell} />
    </Figure>
  );
}

const curve = (mm: readonly number[], stepDeg: number, yAt: (mm: number) => number) =>
  `M${[...mm, mm[0] as number].map((one, i) => `${num(xAt(i * stepDeg))} ${num(yAt(one))}`).join('L')}`;

/** A disc for the right eye, a square for the left. */
const Dot = ({ eye, x, y }: { readonly eye: 'right' | 'left'; readonly x: number; readonly y: number }) =>
  eye === 'right' ? (
    <circle class="dw-spot" cx={num(x)} cy={num(y)} r="1.5" />
  ) : (
    <rect class="dw-spot dw-hollow" x={num(x - 1.5)} y={num(y - 1.5)} width="3" height="3" />
  );

/** The right eye's figures stand above its curve, the left's below, so that like eyes do not cover each other. */
function Place(props: {
  readonly eye: 'right' | 'left';
  readonly place: EdgePlace;
  readonly y: number;
  readonly tell: Tell;
}) {
  const { eye, place, y, tell } = props;
  const x = xAt(place.fromNoseDeg);
  const side = x < 14 ? 'dw-start' : x > WIDTH - 14 ? 'dw-end' : 'dw-middle';
  return (
    <>
      <Dot eye={eye} x={x} y={y} />
      <text class={`dw-label ${side}`} x={num(x)} y={num(eye === 'right' ? y - 3 : y + 7)}>
        {tell.letter(eye)} {tell.number(place.mm)}
      </text>
    </>
  );
}

/** How much of the edge's turn the rim hides whole, in words. */
function hidden({ mm }: EyeEdge, rimDepthMm: number, d: Tell['d']): string {
  const share = mm.filter((one) => one <= rimDepthMm).length / mm.length;
  return d('edge.share', { percent: Math.round(share * 100) });
}
