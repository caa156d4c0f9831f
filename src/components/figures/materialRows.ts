import type { Material } from '../../catalogue/material.ts';
import { reflectancePerSurface } from '../../optics/reflection.ts';
import type { ShopWords } from '../shopWords.ts';
import { type Row, rowWriter } from './row.ts';

/** Figures of a material; the reflectance is of one uncoated surface at 546.07 nm, computed from ne. */
export function materialRows(words: ShopWords, material: Material): readonly Row[] {
  const { figure, fixed, list, money, percent, power, t } = words;
  const { mm, rangeD, row, yesNo } = rowWriter(words);
  const { leastMm, surfaced } = material;
  const orNot = (value: number | null) => (value === null ? t('option.notMade') : mm(value));
  return [
    // Indices keep three decimals: that is where one material parts from the next.
    row('nd', fixed(material.nd, 3)),
    row('ne', fixed(material.ne, 3)),
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
          row(
            'blanks',
            `${surfaced.diametersMm.map((diameter) => figure(diameter)).join(', ')} ${t('unit.mm')}`,
          ),
        ]
      : []),
    ...material.stock.map((stock) =>
      row(
        'stock',
        t('figure.stockValue', {
          diameter: figure(stock.diameterMm),
          from: power(stock.sphereD.from),
          to: power(stock.sphereD.to),
          cylinder: power(-Math.abs(stock.cylinderD)),
          price: money(stock.priceMinor),
        }),
      ),
    ),
  ];
}
