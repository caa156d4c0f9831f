/** The blank that a lens is cut from, and what of the lens it fails to cover. */
import { num } from '../../components/drawing/svgPath.ts';
import type { PointMm } from '../../optics/types.ts';
import type { BlankSituation } from '../../rules/situation.ts';
import { circlePath } from './marks.ts';
import type { Tell } from './tell.ts';

export function FrontBlank(props: {
  readonly blank: BlankSituation;
  readonly marginMm: number;
  readonly lens: string;
  readonly places: readonly PointMm[];
  /** Of the drawing, whose hatching is shared, and of this lens, whose clip is its own. */
  readonly uid: string;
  readonly id: string;
  readonly tell: Tell;
}) {
  const { blank, marginMm, lens, places, uid, id, tell } = props;
  const { usedMm, middle, spareMm } = blank;
  const [x, y, r] = [middle.xMm, -middle.yMm, usedMm / 2];
  const usable = r - marginMm;
  const far = places.reduce((one, other) => (distance(other, middle) > distance(one, middle) ? other : one));
  const side = far.xMm < middle.xMm ? 1 : -1;
  const [labelX, labelY] = [far.xMm + side * 9, -far.yMm + (far.yMm < 0 ? -5 : 7)];
  return (
    <>
      <circle class="dw-blank" cx={num(x)} cy={num(y)} r={num(r)} />
      <circle class="dw-blank-usable" cx={num(x)} cy={num(y)} r={num(usable)} />
      <text class="dw-middle" x={num(x)} y={num(y + r - 2.6)}>
        Ø {num(usedMm)}
      </text>
      {spareMm < 0 && (
        <>
          <path
            class="dw-uncovered"
            clip-path={`url(#${id}-lens)`}
            fill={`url(#${uid}-hatch)`}
            fill-rule="evenodd"
            d={lens + circlePath(x, y, usable)}
          />
          <path
            class="dw-leader"
            d={`M${num(far.xMm + side * 0.6)} ${num(-far.yMm)}L${num(labelX - side)} ${num(labelY - 1.2)}`}
          />
          <text class={`dw-short ${side > 0 ? 'dw-start' : 'dw-end'}`} x={num(labelX)} y={num(labelY)}>
            {tell.d('front.short', { mm: tell.mm(-spareMm) })}
          </text>
        </>
      )}
    </>
  );
}

const distance = (one: PointMm, other: PointMm) => Math.hypot(one.xMm - other.xMm, one.yMm - other.yMm);
