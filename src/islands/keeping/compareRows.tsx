/** The rows of figures of a comparison: what each says of a package, and which side is the better one. */
import type { ComparedPackage } from '../../configurator/basket/answerComparison.ts';
import { marksOf, type Side } from '../../configurator/keeping/marks.ts';
import type { Telling } from './telling.ts';

export interface FigureRow {
  /** Text `compare.<key>`. */
  readonly key: string;
  /** One a package; null: not known, or there is none. */
  readonly cells: readonly { readonly text: string | null; readonly side: Side }[];
}

type Package = ComparedPackage | null;

/** The rows of figures, in the order in which people ask for them. */
export function figureRows({ say, figures }: Telling, packages: readonly Package[]): readonly FigureRow[] {
  const { mm, gram, money, fixed, percent } = figures;
  const row = (
    key: string,
    of: (one: ComparedPackage) => number | null,
    write: (value: number) => string,
    better: 'less' | 'more',
  ): FigureRow => {
    const values = packages.map((one) => one && of(one));
    const sides = marksOf(values, better);
    return {
      key,
      cells: values.map((value, at) => ({
        text: value === null ? null : write(value),
        side: sides[at] ?? null,
      })),
    };
  };
  const light: FigureRow = {
    key: 'light',
    cells: packages.map((one) => ({ text: one && spanOf(one.figures.lightPercents, percent), side: null })),
  };
  return [
    row('thickest', (one) => one.figures.thickestMm, mm, 'less'),
    row('beyond', (one) => one.figures.beyondRimMm, mm, 'less'),
    row('centre', (one) => one.figures.centreMm, mm, 'less'),
    row('mass', (one) => one.figures.massG, gram, 'less'),
    row(
      'sharp',
      (one) => one.figures.sharpDeg,
      (deg) => say('compare.degrees', { deg: fixed(deg, 1) }),
      'more',
    ),
    light,
    row('reflected', (one) => one.figures.reflectedPercent, percent, 'less'),
    row('total', (one) => one.price?.total ?? null, money, 'less'),
  ].filter(({ cells }) => cells.some(({ text }) => text !== null));
}

/** The least to the most of several. */
function spanOf(values: readonly number[], write: (value: number) => string): string {
  const ends = [values[0] ?? 0, values.at(-1) ?? 0].map(write);
  return [...new Set(ends)].join(' – ');
}
