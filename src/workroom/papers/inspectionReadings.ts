/** What is read off each lens to judge the pair: where its centre was found, and the prism at the reference point. */
import { addPrisms } from '../../optics/prism.ts';
import { millimetres } from '../figures.ts';
import type { Part } from '../markup.ts';
import { type WorkedLens, workedLens } from '../workedLens.ts';
import type { PaperContext, PaperPair } from './context.ts';
import { table } from './parts.ts';
import { prismText } from './powers.ts';

const EYES = ['right', 'left'] as const;

/** A table with the ordered reading beside the one that was found, or beside the place to write it. */
export function readings({ t }: PaperContext, { judged, inspection }: PaperPair): Part {
  const lenses = EYES.map((eye) => workedLens(judged, eye));
  if (lenses.some((worked) => worked === null)) return null;
  const halfMm = judged.situation.frame.bMm / 2;
  const row = (
    label: string,
    ordered: (worked: WorkedLens) => string,
    found: (eye: 'right' | 'left') => string | null,
  ): Part[] => [
    t(label),
    ...lenses.flatMap((worked) => (worked === null ? [] : [ordered(worked), found(worked.eye)])),
  ];
  const measured = inspection?.measured;
  const length = (mm: number | undefined) => (mm === undefined ? null : millimetres(mm));
  const rows = [
    ...(judged.situation.design.corridor === null
      ? [
          row(
            'readings.pd',
            ({ pdMm }) => millimetres(pdMm),
            (eye) => length(measured?.[eye].pdMm),
          ),
          row(
            'readings.height',
            ({ reference }) => millimetres(reference.yMm + halfMm),
            (eye) => length(measured?.[eye].heightMm),
          ),
        ]
      : []),
    row(
      'readings.prism',
      ({ eye, ordered, thinning }) => prismText(t, eye, addPrisms(ordered.prism, thinning)),
      (eye) => {
        const prism = measured?.[eye].prism;
        return prism === undefined ? null : prismText(t, eye, prism);
      },
    ),
  ];
  const side = (eye: 'right' | 'left') => [
    `${t(`eye.${eye}`)}, ${t('inspection.ordered')}`,
    t('inspection.measured'),
  ];
  return table(
    [t('readings.title'), ...side('right'), ...side('left')],
    rows,
    inspection === null ? 'items fill read' : 'items read',
  );
}
