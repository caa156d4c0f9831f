/** What the pair from the front says in figures. */
import { nasalSign, prismFromPolar, resolvePrism } from '../../optics/prismBase.ts';
import type { EyeFront, FrontView } from '../../quote/view/front.ts';
import { type FigureRow, rowOf } from './Figure.tsx';
import type { Tell } from './tell.ts';

export function frontRows(view: FrontView, tell: Tell): readonly FigureRow[] {
  const { d, mm } = tell;
  const row = (key: string, of: (eye: EyeFront) => string | null) => rowOf(d(`front.${key}`), view, of);
  return [
    row(view.pdIs === 'near' ? 'nearPd' : 'pd', ({ pdMm }) => (pdMm === null ? null : mm(pdMm, 1))),
    row('height', ({ heightMm }) => (heightMm === null ? null : mm(heightMm, 1))),
    row('segmentHeight', ({ segment }) => (segment === null ? null : mm(segment.top.yMm + view.bMm / 2, 1))),
    row(view.referenceIs, ({ reference, eye }) =>
      reference === null ? null : moved(nasalSign(eye) * reference.xMm, reference.yMm, tell),
    ),
    row('zone', ({ corridor }) =>
      corridor === null
        ? null
        : d('front.left', {
            percent: corridor.leftPercent,
            size: `${tell.number(corridor.zoneWidthMm, 0)} × ${mm(corridor.zoneHeightMm, 0)}`,
          }),
    ),
    row('segment', ({ segment }) =>
      segment === null
        ? null
        : d('front.left', { percent: segment.leftPercent, size: mm(segment.widthMm, 0) }),
    ),
    row('prism', ({ prism, eye }) => {
      if (prism === null) return null;
      const { horizontal, vertical } = resolvePrism(eye, prismFromPolar(prism));
      return [horizontal, vertical]
        .filter(({ amount }) => amount >= 0.005)
        .map(({ amount, base }) => `${tell.prism(amount)} ${d(`front.base.${base}`)}`)
        .join(', ');
    }),
    row('blank', ({ blank }) =>
      blank === null
        ? null
        : d(`front.${blank.kind}`, { used: tell.mm(blank.usedMm, 0), needed: mm(blank.neededMm) }),
    ),
    row('cover', ({ blank, eye }) => {
      if (blank === null) return null;
      const place = tell.place(eye, blank.closestAtDeg);
      return d(blank.spareMm < 0 ? 'front.shortAt' : 'front.spareAt', {
        mm: mm(Math.abs(blank.spareMm)),
        place,
      });
    }),
  ];
}

/** A place from the boxed centre in words: so far in or out, up or down. */
function moved(inMm: number, upMm: number, { d, mm }: Tell): string {
  const part = (value: number, plus: string, minus: string) =>
    value === 0 ? null : `${mm(Math.abs(value))} ${d(`front.${value > 0 ? plus : minus}`)}`;
  return (
    [part(inMm, 'in', 'out'), part(upMm, 'up', 'down')].filter((one) => one !== null).join(', ') || mm(0)
  );
}
