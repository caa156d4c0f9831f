/** Drawing 2: each lens cut through its thickest meridian, in its rim, over the lens it is compared with. */
import { EYES } from '../../configurator/fields.ts';
import type { SectionView } from '../../quote/view/section.ts';
import { EyeTable, Figure, type FigureRow, Key, rowOf } from './Figure.tsx';
import { SectionEye } from './SectionEye.tsx';
import { sectionField } from './sectionShape.ts';
import type { Tell } from './tell.ts';

interface Props {
  readonly view: SectionView;
  readonly tell: Tell;
  readonly uid: string;
  /** Name of the package compared with; null: none. */
  readonly comparedAs: string | null;
}

export function SectionDrawing({ view, tell, uid, comparedAs }: Props) {
  const { d } = tell;
  const field = sectionField([view.right, view.left]);
  const { mounting, rimDepthMm } = view.hold;
  const held = mounting === 'full' ? (rimDepthMm > 0 ? 'full' : 'open') : mounting;
  const notes = [d(`section.hold.${held}`), view.estimate && d(`estimate.${view.estimate}`)].filter(
    (note) => note !== null,
  );
  const compared = view.right.compared !== null && comparedAs !== null ? comparedAs : null;
  const marks = [
    { name: d('section.present'), mark: <path class="dw-glass" d="M-6 -3Q-3 0 -6 3H6Q1 0 6 -3Z" /> },
    ...(compared === null
      ? []
      : [
          {
            name: d('section.compared', { name: compared }),
            mark: <path class="dw-compared" d="M-6 -3Q-3 0 -6 3H6Q1 0 6 -3Z" />,
          },
        ]),
  ];
  return (
    <Figure uid={uid} title={d('section.title')} lead={d('section.lead')} notes={notes}>
      <div class="dw-eyes">
        {EYES.map((eye) => (
          <SectionEye
            key={eye}
            section={view[eye]}
            hold={view.hold}
            field={field}
            tell={tell}
            uid={`${uid}-${eye}`}
          />
        ))}
      </div>
      <Key marks={marks} />
      <EyeTable caption={d('section.figures')} rows={rows(view, compared, tell)} tell={tell} />
    </Figure>
  );
}

function rows(view: SectionView, compared: string | null, tell: Tell): readonly FigureRow[] {
  const { d, mm } = tell;
  const place = (at: { readonly mm: number; readonly atDeg: number }, eye: 'right' | 'left') =>
    `${mm(at.mm)}, ${tell.place(eye, at.atDeg)}`;
  const rim = view.hold.mounting === 'full' && view.hold.rimDepthMm > 0;
  const first = [
    rowOf(d('section.centre'), view, ({ centreMm }) => mm(centreMm)),
    rowOf(d('section.thickest'), view, ({ thickest }, eye) => place(thickest, eye)),
    rowOf(d('section.thinnest'), view, ({ thinnest }, eye) => place(thinnest, eye)),
    rowOf(d('section.beyond'), view, ({ beyondRimMm }) => (rim ? mm(beyondRimMm) : null)),
    rowOf(d('section.mass'), view, ({ massG }) => tell.gram(massG)),
  ];
  if (compared === null) return first;
  const other = (key: string) => compared + tell.colon + d(`section.${key}`);
  return [
    ...first,
    rowOf(other('centre'), view, (eye) => eye.compared && mm(eye.compared.centreMm)),
    rowOf(other('thickest'), view, ({ compared: one }, eye) => one && place(one.thickest, eye)),
    rowOf(other('mass'), view, (eye) => eye.compared && tell.gram(eye.compared.massG)),
  ];
}
