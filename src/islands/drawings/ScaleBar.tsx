/** 20 mm, ruled every 10. */
import { num } from '../../components/drawing/svgPath.ts';
import type { Tell } from './tell.ts';

export const ScaleBar = ({ x, y, tell }: { readonly x: number; readonly y: number; readonly tell: Tell }) => (
  <g class="dw-scale">
    <path
      d={`M${num(x)} ${num(y - 1.2)}v2.4M${num(x)} ${num(y)}h20M${num(x + 10)} ${num(y - 0.8)}v1.6M${num(x + 20)} ${num(y - 1.2)}v2.4`}
    />
    <text class="dw-middle" x={num(x + 10)} y={num(y + 5.6)}>
      {tell.mm(20, 0)}
    </text>
  </g>
);
