/** The marks on a lens from the front: pupil, reference point, corridor, segment, prism. Places from its boxed centre. */
import { num } from '../../components/drawing/svgPath.ts';
import type { PolarPrism } from '../../optics/prismBase.ts';
import type { PointMm } from '../../optics/types.ts';
import type { CorridorView, FrontView, SegmentView } from '../../quote/view/front.ts';
import { circlePath, cross, head } from './marks.ts';
import type { Tell } from './tell.ts';

const PUPIL_RADIUS_MM = 2;

/** A pupil of 4 mm. */
export const Pupil = ({ at }: { readonly at: PointMm }) => (
  <circle class="dw-pupil" cx={num(at.xMm)} cy={num(-at.yMm)} r={PUPIL_RADIUS_MM} />
);

/** A ring with a cross for an optical centre, a filled dot in a ring for a prism reference point. */
export function Reference({ kind, at }: { readonly kind: FrontView['referenceIs']; readonly at: PointMm }) {
  const [x, y] = [at.xMm, -at.yMm];
  if (kind === 'optical-centre')
    return <path class="dw-reference" d={circlePath(x, y, 1.1) + cross(x, y, 2.4)} />;
  return (
    <>
      <circle class="dw-reference" cx={num(x)} cy={num(y)} r="1.3" />
      <circle class="dw-dot" cx={num(x)} cy={num(y)} r="0.5" />
    </>
  );
}

/** The corridor as a line, and the zone to read in: dashed whole, washed where the lens has it. */
export function Corridor({ corridor, clip }: { readonly corridor: CorridorView; readonly clip: string }) {
  const { from, to, zoneWidthMm: width, zoneHeightMm: height } = corridor;
  const zone = { x: num(to.xMm - width / 2), y: num(-to.yMm), width, height };
  return (
    <>
      <g clip-path={`url(#${clip})`}>
        <rect class="dw-zone" {...zone} />
      </g>
      <rect class="dw-zone-whole" {...zone} />
      <path class="dw-corridor" d={`M${num(from.xMm)} ${num(-from.yMm)}L${num(to.xMm)} ${num(-to.yMm)}`} />
    </>
  );
}

/** A flat-top or round segment: dashed whole, washed where the lens has it. */
export function Segment({ segment, clip }: { readonly segment: SegmentView; readonly clip: string }) {
  const { top, widthMm, centreBelowTopMm } = segment;
  const r = widthMm / 2;
  const half = Math.sqrt(Math.max(0, r * r - centreBelowTopMm * centreBelowTopMm));
  const y = num(-top.yMm);
  const d = `M${num(top.xMm - half)} ${y}A${num(r)} ${num(r)} 0 1 0 ${num(top.xMm + half)} ${y}Z`;
  return (
    <>
      <g clip-path={`url(#${clip})`}>
        <path class="dw-zone dw-segment" d={d} />
      </g>
      <path class="dw-zone-whole" d={d} />
    </>
  );
}

/** An arrow towards the base, 3 mm and 2 mm more for each prism dioptre, to 20 mm at most; its amount at the tip. */
export function PrismArrow(props: { readonly prism: PolarPrism; readonly at: PointMm; readonly tell: Tell }) {
  const { prism, at, tell } = props;
  const turn = (prism.baseDeg * Math.PI) / 180;
  const [dx, dy] = [Math.cos(turn), -Math.sin(turn)];
  const length = Math.min(20, 3 + 2 * prism.amount);
  const [x, y] = [at.xMm + dx * length, -at.yMm + dy * length];
  const anchor = dx > 0.4 ? 'dw-start' : dx < -0.4 ? 'dw-end' : 'dw-middle';
  return (
    <g class="dw-prism">
      <path d={`M${num(at.xMm)} ${num(-at.yMm)}L${num(x - dx * 2.4)} ${num(y - dy * 2.4)}`} />
      <path class="dw-head" d={head(x, y, dx, dy, 3.4)} />
      <text class={`${anchor}`} x={num(x + dx * 1.4)} y={num(y + dy * (dy < 0 ? 2 : 5) + 1.2)}>
        {tell.prism(prism.amount)}
      </text>
    </g>
  );
}
