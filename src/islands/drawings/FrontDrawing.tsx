/** Drawing 1: the pair from the front, as the workroom lays it out. 1 user unit is 1 mm; y down. */
import { num } from '../../components/drawing/svgPath.ts';
import type { EyeFront, FrontView } from '../../quote/view/front.ts';
import { EyeTable, Figure } from './Figure.tsx';
import { FrontEye } from './FrontEye.tsx';
import { FrontKey } from './FrontKey.tsx';
import { type FrontLayout, frontLayout } from './frontLayout.ts';
import { frontRows } from './frontRows.ts';
import { dimension } from './marks.ts';
import { ScaleBar } from './ScaleBar.tsx';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: FrontView;
  readonly tell: Tell;
  readonly uid: string;
}

export function FrontDrawing({ view, tell, uid }: Props) {
  const { d } = tell;
  const layout = frontLayout(view);
  const { left, top, width, height } = layout;
  const rows = frontRows(view, tell);
  const notes = [
    view.right.blank || view.left.blank ? null : d('front.noBlank'),
    [view.right, view.left].some(({ pdMm, pupil }) => pdMm !== null && pupil === null)
      ? d('front.noPupil')
      : null,
  ].filter((note) => note !== null);
  return (
    <Figure uid={uid} title={d('front.title')} lead={d('front.lead')} notes={notes}>
      <svg
        class="dw dw-front"
        viewBox={`${num(left)} ${num(top)} ${num(width)} ${num(height)}`}
        width={`${num(width)}mm`}
        height={`${num(height)}mm`}
        role="img"
        aria-labelledby={`${uid}-t`}
      >
        <title id={`${uid}-t`}>{d('front.title')}</title>
        <defs>
          <pattern
            id={`${uid}-hatch`}
            width="1.6"
            height="1.6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path class="dw-hatch" d="M.8 0v1.6" />
          </pattern>
        </defs>
        <path class="dw-axis" d={`M0 ${num(layout.pdY - 2)}V${num(view.bMm / 2)}`} />
        <FrontEye view={view} eye={view.right} uid={uid} tell={tell} />
        <FrontEye view={view} eye={view.left} uid={uid} tell={tell} />
        <Distance view={view} eye={view.right} layout={layout} tell={tell} />
        <Distance view={view} eye={view.left} layout={layout} tell={tell} />
        <ScaleBar x={-10} y={layout.scaleY} tell={tell} />
        {[view.right, view.left].map(({ eye, centreXMm }) => (
          <text key={eye} class="dw-name" x={num(centreXMm)} y={num(layout.scaleY + 1.5)}>
            {tell.eye(eye)}
          </text>
        ))}
      </svg>
      <FrontKey view={view} uid={uid} tell={tell} />
      <EyeTable caption={d('front.figures')} rows={rows} tell={tell} />
    </Figure>
  );
}

/** A monocular PD: from the middle of the bridge to the line through the pupil. */
function Distance(props: {
  readonly view: FrontView;
  readonly eye: EyeFront;
  readonly layout: FrontLayout;
  readonly tell: Tell;
}) {
  const { view, eye, layout, tell } = props;
  if (eye.pdMm === null) return null;
  const x = eye.eye === 'right' ? -eye.pdMm : eye.pdMm;
  const { line, heads } = dimension(0, x, layout.pdY);
  const down = eye.pupil ? -eye.pupil.yMm - 2.6 : view.bMm / 2;
  return (
    <g class="dw-dimension">
      <path class="dw-axis" d={`M${num(x)} ${num(layout.pdY - 2)}V${num(down)}`} />
      <path d={line} />
      <path class="dw-head" d={heads} />
      <text x={num(x / 2)} y={num(layout.pdY - 1.8)}>
        {tell.number(eye.pdMm, 1)}
      </text>
    </g>
  );
}
