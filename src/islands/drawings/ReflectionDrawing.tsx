/** The other half of drawing 5: a white window mirrored in both faces of the lens, without and with its coating. */
import type { LightView, Reflections } from '../../quote/view/light.ts';
import { Figure } from './Figure.tsx';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: LightView;
  readonly lens: string;
  readonly tell: Tell;
  readonly uid: string;
}

export function ReflectionDrawing({ view, lens, tell, uid }: Props) {
  const { d } = tell;
  const { bare, coated, coating } = view;
  if (bare === null)
    return (
      <Figure uid={uid} title={d('reflection.title')} lead={d('reflection.mirror')}>
        {null}
      </Figure>
    );
  const notes = coated === null && coating !== null ? [d('reflection.unchanged', { coating })] : [];
  // Below the lens, inside the field whatever the frame.
  const textY = Math.min(34, Math.round(view.bMm / 2) + 6);
  const shown = [
    { name: d('reflection.without'), seen: bare },
    ...(coated === null ? [] : [{ name: d('reflection.with', { coating: coating ?? '' }), seen: coated }]),
  ];
  return (
    <Figure uid={uid} title={d('reflection.title')} lead={d('reflection.lead')} notes={notes}>
      <ul class="dw-states dw-pairs">
        {shown.map(({ name, seen }, i) => (
          <li key={name}>
            <Mirrored seen={seen} lens={lens} textY={textY} name={name} tell={tell} uid={`${uid}-${i}`} />
          </li>
        ))}
      </ul>
    </Figure>
  );
}

/** A window of four panes, 12 by 15 mm. */
const panes = (x: number, y: number) =>
  [0, 6.4].flatMap((dx) => [0, 7.9].map((dy) => `M${x + dx} ${y + dy}h5.6v7.1h-5.6Z`)).join('');

function Mirrored(props: {
  readonly seen: Reflections;
  readonly textY: number;
  readonly lens: string;
  readonly name: string;
  readonly tell: Tell;
  readonly uid: string;
}) {
  const { seen, textY, lens, name, tell, uid } = props;
  const text = tell.d('reflection.says', {
    name,
    front: tell.percent(seen.frontPercent, 2),
    back: tell.percent(seen.backPercent, 2),
  });
  return (
    <>
      <svg class="dw dw-light" viewBox="-44 -36 88 72" role="img" aria-label={name}>
        <clipPath id={`${uid}-c`}>
          <path d={lens} />
        </clipPath>
        <rect class="dw-dark" x="-44" y="-36" width="88" height="72" />
        <g clip-path={`url(#${uid}-c)`}>
          <path d={panes(-17, -11)} fill={seen.frontGrey} />
          <path d={panes(5, -7)} fill={seen.backGrey} />
        </g>
        <path class="dw-mirror-rim" d={lens} />
        <g class="dw-mirror-text">
          <text x="-11" y={textY}>
            {tell.d('reflection.front')}
          </text>
          <text x="11" y={textY}>
            {tell.d('reflection.back')}
          </text>
        </g>
      </svg>
      <p class="dw-state">{text}</p>
    </>
  );
}
