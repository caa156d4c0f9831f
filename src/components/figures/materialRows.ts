import type { Material } from '../../catalogue/material.ts';
import { reflectancePerSurface } from '../../optics/reflection.ts';
import { figure, list, money, percent, power, t } from '../shopWords.ts';
import { mm, type Row, rangeD, row, yesNo } from './row.ts';

/** Figures of a material; the reflectance is of one uncoated surface at 546.07 nm, computed from ne. */
export function materialRows(material: Material): readonly Row[] {
  const { leastMm, surfaced } = material;
  const orNot = (value: number | null) => (value === null ? t('option.notMade') : mm(value));
  return [
    row('nd', index(material.nd)),
    row('ne', index(material.ne)),
    row('abbe', figure(material.abbe, 1)),
    row('density', `${figure(material.densityGPerCm3, 2)} ${t('unit.density')}`),
    row('uv', `${figure(material.uvCutOffNm, 0)} ${t('unit.nanometre')}`),
    row('reflection', percent(reflectancePerSurface(material.ne), 1)),
    row('leastCentre', mm(leastMm.centre)),
    row('leastEdge', mm(leastMm.edge)),
    row('leastGroove', orNot(leastMm.groove)),
    row('leastHole', orNot(leastMm.hole)),
    row('mountings', list(material.mountings.map((mounting) => t(`mountingShort.${mounting}`)))),
    row('impact', yesNo(material.impactResistant)),
    row('hard', yesNo(material.alwaysHardCoated)),
    row('power', rangeD(material.powerD)),
    ...(surfaced
      ? [
          row(
            'baseCurves',
            `${surfaced.baseCurves.map((c) => power(c.powerD)).join(', ')} ${t('unit.dioptre')}`,
          ),
          row('blanks', `${surfaced.diametersMm.join(', ')} ${t('unit.mm')}`),
        ]
      : []),
    ...material.stock.map((stock) =>
      row(
        'stock',
        t('figure.stockValue', {
          diameter: stock.diameterMm,
          from: power(stock.sphereD.from),
          to: power(stock.sphereD.to),
          cylinder: power(-Math.abs(stock.cylinderD)),
          price: money(stock.priceMinor),
        }),
      ),
    ),
  ];
}

/** Indices keep three decimals: that is where one material parts from the next. */
function index(value: number): string {
  return value.toFixed(3);
}
