/** Drawing 4: how far the view stays sharp towards 8 directions, from the front. 1 user unit is 1 degree of gaze. */
import { num } from '../../components/drawing/svgPath.ts';
import { EYES } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import type { GazeDirection, GazeView } from '../../quote/view/gaze.ts';
import { EyeTable, Figure, Key } from './Figure.tsx';
import { circlePath, cross } from './marks.ts';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: GazeView;
  readonly tell: Tell;
  readonly uid: string;
}

const RINGS = [10, 20, 30] as const;
const FIGURE_AT = 42;

export function GazeDrawing({ view, tell, uid }: Props) {
  const { d } = tell;
  if (!view.computed)
    return (
      <Figure uid={uid} title={d('gaze.title')} lead={d(`gaze.not.${view.because}`)}>
        {null}
      </Figure>
    );
  const most = tell.deg(view.largestDeg);
  const notes = [
    view.spherical ? d('gaze.spherical') : null,
    d('gaze.how', { blur: tell.number(view.blurD), rotation: tell.number(view.rotationMm, 0) }),
  ].filter((note) => note !== null);
  const ends = new Set(EYES.flatMap((eye) => view[eye].map(({ endedBy }) => endedBy)));
  const marks = (['blur', 'largest gaze', 'no ray'] as const)
    .filter((end) => ends.has(end))
    .map((end) => ({
      name: d(`gaze.end.${end.replace(' ', '-')}`, { most }),
      mark: <End kind={end} x={0} y={0} />,
    }));
  return (
    <Figure
      uid={uid}
      title={d('gaze.title')}
      lead={
        view.leastDeg < view.largestDeg
          ? d('gaze.lead', { least: tell.deg(view.leastDeg, 1) })
          : d('gaze.leadWhole', { most })
      }
      notes={notes}
    >
      <div class="dw-eyes">
        {EYES.map((eye) => (
          <GazeEye
            key={eye}
            eye={eye}
            directions={view[eye]}
            largestDeg={view.largestDeg}
            tell={tell}
            uid={`${uid}-${eye}`}
          />
        ))}
      </div>
      <Key marks={marks} />
      <EyeTable caption={d('gaze.figures')} rows={rows(view, tell)} tell={tell} />
    </Figure>
  );
}

function GazeEye(props: {
  readonly eye: Eye;
  readonly directions: readonly GazeDirection[];
  readonly largestDeg: number;
  readonly tell: Tell;
  readonly uid: string;
}) {
  const { eye, directions, largestDeg, tell, uid } = props;
  const { d } = tell;
  const at = (deg: number, r: number) => {
    const turn = (deg * Math.PI) / 180;
    return { x: r * Math.cos(turn), y: -r * Math.sin(turn) };
  };
  const places = directions.map((one) => ({ ...one, ...at(one.directionDeg, one.angleDeg) }));
  const nose = eye === 'right' ? 1 : -1;
  return (
    <svg class="dw dw-gaze" viewBox="-60 -58 120 120" role="img" aria-labelledby={`${uid}-t ${uid}-s`}>
      <title id={`${uid}-t`}>
        {d('gaze.one', {
          eye: tell.eye(eye),
          least: tell.deg(Math.min(...directions.map(({ angleDeg }) => angleDeg)), 1),
        })}
      </title>
      <desc id={`${uid}-s`}>
        {directions
          .map((one) => tell.place(eye, one.directionDeg) + tell.colon + tell.deg(one.angleDeg, 1))
          .join(tell.semicolon)}
      </desc>
      <path class="dw-grid" d={RINGS.map((r) => circlePath(0, 0, r)).join('') + cross(0, 0, largestDeg)} />
      <circle class="dw-gaze-rim" r={largestDeg} />
      <path class="dw-gaze-area" d={`M${places.map(({ x, y }) => `${num(x)} ${num(y)}`).join('L')}Z`} />
      {RINGS.map((r) => (
        <text key={r} class="dw-quiet dw-middle" x={num(0.42 * r)} y={num(-0.9 * r + 1)}>
          {tell.deg(r)}
        </text>
      ))}
      {places.map(({ directionDeg, endedBy, x, y }) => (
        <End key={directionDeg} kind={endedBy} x={x} y={y} />
      ))}
      {directions.map(({ directionDeg, angleDeg, endedBy }) => {
        const { x, y } = at(directionDeg, FIGURE_AT);
        return (
          <text key={directionDeg} class="dw-middle" x={num(x)} y={num(y + 2.4)}>
            {endedBy === 'largest gaze' ? tell.deg(largestDeg) : tell.number(angleDeg, 1)}
          </text>
        );
      })}
      <text class="dw-middle dw-quiet" x="0" y="-50">
        {d('gaze.up')}
      </text>
      <text class="dw-middle dw-quiet" x="0" y="55">
        {d('gaze.down')}
      </text>
      <text class="dw-middle dw-quiet" x={num(nose * 48)} y="10">
        {d('gaze.nose')}
      </text>
      <text class="dw-middle dw-quiet" x={num(-nose * 48)} y="10">
        {d('gaze.temple')}
      </text>
      <text class="dw-name" x="-58" y="-48">
        {tell.letter(eye)}
      </text>
    </svg>
  );
}

/** A disc where blur ends the sharp view, a ring where the largest gaze asked was still sharp, a cross where no ray passes. */
function End({
  kind,
  x,
  y,
}: {
  readonly kind: GazeDirection['endedBy'];
  readonly x: number;
  readonly y: number;
}) {
  if (kind === 'no ray')
    return <path class="dw-gaze-none" d={`M${num(x - 2)} ${num(y - 2)}l4 4m0 -4l-4 4`} />;
  return <circle class={kind === 'blur' ? 'dw-gaze-blur' : 'dw-gaze-open'} cx={num(x)} cy={num(y)} r="2" />;
}

function rows(view: Extract<GazeView, { computed: true }>, tell: Tell) {
  const least = (directions: readonly GazeDirection[]) =>
    directions.reduce((one, other) => (other.angleDeg < one.angleDeg ? other : one));
  const say = (eye: Eye) => {
    const { angleDeg, directionDeg, endedBy } = least(view[eye]);
    if (endedBy === 'largest gaze') return tell.d('gaze.whole', { most: tell.deg(view.largestDeg) });
    return `${tell.deg(angleDeg, 1)}, ${tell.place(eye, directionDeg)}`;
  };
  return [{ label: tell.d('gaze.least'), right: say('right'), left: say('left') }];
}
