/** Drawing 3: edge thickness of both lenses round the rim, told from the nose over the brow. */
import { EYES } from '../../configurator/fields.ts';
import type { EdgeView, EyeEdge } from '../../quote/view/edge.ts';
import { Dot, EdgeChart } from './EdgeChart.tsx';
import { EyeTable, Figure, Key, rowOf } from './Figure.tsx';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: EdgeView;
  readonly tell: Tell;
  readonly uid: string;
}

export function EdgeDrawing({ view, tell, uid }: Props) {
  const { d, mm } = tell;
  const { rimDepthMm } = view;
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
      <EdgeChart view={view} tell={tell} uid={uid} />
      <Key marks={marks} />
      <EyeTable caption={d('edge.figures')} rows={rows} tell={tell} />
    </Figure>
  );
}

/** How much of the edge's turn the rim hides whole, in words. */
function hidden({ mm }: EyeEdge, rimDepthMm: number, d: Tell['d']): string {
  const share = mm.filter((one) => one <= rimDepthMm).length / mm.length;
  return d('edge.share', { percent: Math.round(share * 100) });
}
