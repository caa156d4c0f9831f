/** One lens cut through its thickest meridian, with its dimensions. */
import { num } from '../../components/drawing/svgPath.ts';
import type { EyeSection, HoldView, SectionEnd } from '../../quote/view/section.ts';
import { dimension } from './marks.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { comparedPath, cordAt, lensPath, rimPath, type sectionField } from './sectionShape.ts';
import type { Tell } from './tell.ts';

export function SectionEye(props: {
  readonly section: EyeSection;
  readonly hold: HoldView;
  readonly field: ReturnType<typeof sectionField>;
  readonly tell: Tell;
  readonly uid: string;
}) {
  const { section, hold, field, tell, uid } = props;
  const { eye, thick, other, centreMm, compared } = section;
  const { d } = tell;
  const ends = [
    { end: thick, up: 1, place: tell.place(eye, thick.atDeg) },
    { end: other, up: -1, place: tell.place(eye, other.atDeg) },
  ] as const;
  const inside = thick.sMm > 0 && other.sMm < 0;
  return (
    <svg
      class="dw dw-section"
      viewBox={`${num(field.left)} ${num(field.top)} ${num(field.width)} ${num(field.height)}`}
      width={`${num(field.width)}mm`}
      height={`${num(field.height)}mm`}
      role="img"
      aria-labelledby={`${uid}-t`}
    >
      <title id={`${uid}-t`}>
        {d('section.one', {
          eye: tell.eye(eye),
          centre: tell.mm(centreMm),
          thick: tell.mm(thick.mm),
          place: ends[0].place,
          other: tell.mm(other.mm),
        })}
      </title>
      <defs>
        <pattern
          id={`${uid}-rim`}
          width="1"
          height="1"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path class="dw-rim-line" d="M.5 0v1" />
        </pattern>
      </defs>
      <path class="dw-axis" d={`M${num(field.left + 3)} 0H${num(field.left + field.width - 3)}`} />
      {ends.map(({ end, up }) => {
        const rim = rimPath(end, hold, up);
        return rim && <path key={up} class="dw-rim" d={rim} fill={`url(#${uid}-rim)`} />;
      })}
      <path class="dw-glass" d={lensPath(section, hold)} />
      {ends.map(({ end, up }) => {
        const cord = cordAt(end, hold);
        return (
          cord && (
            <circle key={up} class="dw-cord" cx={num(cord.xMm)} cy={num(-cord.yMm - up * 0.3)} r="0.3" />
          )
        );
      })}
      {compared && <path class="dw-compared" d={comparedPath(compared, section)} />}
      {ends.map(({ end, up, place }) => (
        <End key={up} end={end} up={up} place={place} tell={tell} />
      ))}
      {inside && <Centre mm={centreMm} tell={tell} />}
      <text class="dw-start dw-quiet" x={num(field.left + 1)} y="-2">
        {d('section.front')}
      </text>
      <text class="dw-name dw-end" x={num(field.left + field.width - 2)} y={num(field.low + 21.5)}>
        {tell.eye(eye)}
      </text>
      <ScaleBar x={field.left + 2} y={field.low + 19} tell={tell} />
    </svg>
  );
}

/** The thickness at an end, dimensioned beyond it. */
function End(props: {
  readonly end: SectionEnd;
  readonly up: 1 | -1;
  readonly place: string;
  readonly tell: Tell;
}) {
  const { end, up, place, tell } = props;
  const y = -end.sMm - up * 4.6;
  const [from, to] = [end.frontMm, end.frontMm + end.mm];
  const { line, heads } = dimension(from, to, y);
  const start = -end.sMm - up * 0.6;
  return (
    <g class="dw-dimension">
      <path
        class="dw-extension"
        d={`M${num(from)} ${num(start)}V${num(y - up * 1.4)}M${num(to)} ${num(start)}V${num(y - up * 1.4)}`}
      />
      <path d={line} />
      <path class="dw-head" d={heads} />
      <text x={num((from + to) / 2)} y={num(up > 0 ? y - 6 : y + 4.8)}>
        {tell.number(end.mm)}
      </text>
      <text class="dw-quiet" x={num((from + to) / 2)} y={num(up > 0 ? y - 2.2 : y + 8.6)}>
        {place}
      </text>
    </g>
  );
}

/** The thickness at the reference point, dimensioned through it. */
function Centre({ mm, tell }: { readonly mm: number; readonly tell: Tell }) {
  const { heads } = dimension(0, mm, 0);
  return (
    <g class="dw-dimension">
      <path class="dw-head" d={heads} />
      <text class="dw-start" x={num(mm + 5)} y="-1.6">
        {tell.number(mm)}
      </text>
    </g>
  );
}
