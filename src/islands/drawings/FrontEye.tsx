/** One lens of the pair from the front, in places from its own boxed centre. */
import { closedPath, num } from '../../components/drawing/svgPath.ts';
import type { EyeFront, FrontView } from '../../quote/view/front.ts';
import { FrontBlank } from './FrontBlank.tsx';
import { Corridor, PrismArrow, Pupil, Reference, Segment } from './FrontMarks.tsx';
import { cross, head, unflat } from './marks.ts';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: FrontView;
  readonly eye: EyeFront;
  readonly uid: string;
  readonly tell: Tell;
}

export function FrontEye({ view, eye, uid, tell }: Props) {
  const { aMm, bMm } = view;
  const places = unflat(eye.outline);
  const lens = closedPath(places);
  const id = `${uid}-${eye.eye}`;
  return (
    <g transform={`translate(${num(eye.centreXMm)} 0)`}>
      <clipPath id={`${id}-lens`}>
        <path d={lens} />
      </clipPath>
      {eye.blank && (
        <FrontBlank
          blank={eye.blank}
          marginMm={view.blankMarginMm}
          lens={lens}
          places={places}
          uid={uid}
          id={id}
          tell={tell}
        />
      )}
      <path class="dw-lens" d={lens} />
      <rect class="dw-box" x={num(-aMm / 2)} y={num(-bMm / 2)} width={num(aMm)} height={num(bMm)} />
      <path class="dw-thin" d={cross(0, 0, 1.6)} />
      {eye.corridor && <Corridor corridor={eye.corridor} clip={`${id}-lens`} />}
      {eye.segment && <Segment segment={eye.segment} clip={`${id}-lens`} />}
      {eye.pupil && <Pupil at={eye.pupil} />}
      {eye.reference && <Reference kind={view.referenceIs} at={eye.reference} />}
      {eye.cross && <path class="dw-cross" d={cross(eye.cross.xMm, -eye.cross.yMm, 4)} />}
      {eye.prism && <PrismArrow prism={eye.prism} at={eye.reference ?? { xMm: 0, yMm: 0 }} tell={tell} />}
      <Height view={view} eye={eye} tell={tell} />
    </g>
  );
}

/** The measured height, from the lowest tangent of the box, on the temple side. */
function Height({ view, eye, tell }: Omit<Props, 'uid'>) {
  const top = eye.segment ? eye.segment.top.yMm : eye.pupil?.yMm;
  if (top === undefined) return null;
  const out = eye.eye === 'right' ? -1 : 1;
  const x = out * (view.aMm / 2 + 6);
  const bottom = view.bMm / 2;
  const from = eye.segment
    ? eye.segment.top.xMm + (out * eye.segment.widthMm) / 2
    : (eye.pupil?.xMm ?? 0) + out * 2.6;
  const middle = num((bottom - top) / 2);
  // Turned figures are read from the right, so on the left eye's side they stand the height of a figure farther out.
  const textX = out < 0 ? x - 1.8 : x + 5.2;
  return (
    <g class="dw-dimension">
      <path
        class="dw-extension"
        d={`M${num(from)} ${num(-top)}H${num(x + out * 1.5)}M${num((out * view.aMm) / 2 + out)} ${num(bottom)}H${num(x + out * 1.5)}`}
      />
      <path d={`M${num(x)} ${num(-top)}V${num(bottom)}`} />
      <path class="dw-head" d={head(x, -top, 0, -1) + head(x, bottom, 0, 1)} />
      <text x={num(textX)} y={middle} transform={`rotate(-90 ${num(textX)} ${middle})`}>
        {tell.number(bottom + top, 1)}
      </text>
    </g>
  );
}
