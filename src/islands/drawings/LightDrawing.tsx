/** Drawing 5: the lens over a street and a page of print in each declared state, and what its faces reflect. */
import { closedPath } from '../../components/drawing/svgPath.ts';
import type { LightState, LightView } from '../../quote/view/light.ts';
import { Figure } from './Figure.tsx';
import { unflat } from './marks.ts';
import { ReflectionDrawing } from './ReflectionDrawing.tsx';
import { Scene } from './Scene.tsx';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: LightView;
  readonly tell: Tell;
  readonly uid: string;
}

export function LightDrawing({ view, tell, uid }: Props) {
  const { d } = tell;
  const lens = closedPath(unflat(view.outline));
  const notes = [
    d('light.colour'),
    view.photochromic ? d('light.between') : null,
    view.polarised ? d('light.polarised') : null,
  ].filter((note) => note !== null);
  return (
    <>
      <Figure uid={uid} title={d('light.title')} lead={d('light.lead')} notes={notes}>
        <ul class="dw-states">
          {view.states.map((state, i) => (
            <li key={state.name}>
              <State state={state} view={view} lens={lens} tell={tell} uid={`${uid}-${i}`} />
            </li>
          ))}
        </ul>
      </Figure>
      <ReflectionDrawing view={view} lens={lens} tell={tell} uid={`${uid}-r`} />
    </>
  );
}

/** What a state is called, with the light it lets through and its category: a chip of its colour before it. */
function sentence({ name, percents, category }: LightState, { d, percent, semicolon }: Tell): string {
  const light = percents.map((one) => percent(one, 1)).join(d('light.to'));
  return [
    name === '' ? d('light.none') : name,
    d('light.through', { percent: light }),
    category === null ? d('light.darker') : d('light.category', { category }),
  ].join(semicolon);
}

function State(props: {
  readonly state: LightState;
  readonly view: LightView;
  readonly lens: string;
  readonly tell: Tell;
  readonly uid: string;
}) {
  const { state, view, lens, tell, uid } = props;
  const text = sentence(state, tell);
  return (
    <>
      <svg class="dw dw-light" viewBox="-44 -36 88 72" role="img" aria-label={tell.d('light.scene')}>
        <defs>
          <linearGradient id={`${uid}-g`} x1="0" y1="0" x2="0" y2="1">
            <stop offset=".12" stop-color={state.top} />
            <stop offset=".88" stop-color={state.foot} />
          </linearGradient>
        </defs>
        <Scene print={tell.d('light.print')} />
        <path class="dw-tint" d={lens} fill={`url(#${uid}-g)`} />
        {view.mirrored && (
          <path class="dw-flash" d="M-19 -11C-12 -16 -3 -17 5 -16M-21 -5C-20.5 -7 -20 -8 -19.4 -9" />
        )}
        <path class="dw-light-rim" d={lens} />
      </svg>
      <p class="dw-state">
        <svg class="dw-chip" viewBox="0 0 16 16" aria-hidden="true">
          <rect width="16" height="16" fill={`url(#${uid}-g)`} />
        </svg>
        {text}
      </p>
    </>
  );
}
