/** Whole numbers as strokes, for pictures that are made where no fonts are at hand. A figure is 4 wide and 6 high. */

const FIGURES: Readonly<Record<string, string>> = {
  '0': 'M2 0Q4 0 4 3T2 6T0 3T2 0Z',
  '1': 'M.8 1.2L2.4 0V6',
  '2': 'M.1 1.5Q.3 0 2.1 0T4 1.6Q4 2.7 2.6 3.8L0 6H4',
  '3': 'M.2 0H3.8L1.9 2.3Q4 2.4 4 4.1T2 6Q.5 6 0 4.7',
  '4': 'M3 6V0L0 4.3H4',
  '5': 'M3.7 0H.7L.4 2.7Q1.1 2.2 2 2.2Q4 2.2 4 4T2 6Q.5 6 0 5',
  '6': 'M3.3 0Q.1 1 .1 4Q.1 6 2.1 6T4 4.1T2.1 2.3T.1 4',
  '7': 'M0 0H4L1.6 6',
  '8': 'M2 2.8Q.3 2.6 .3 1.4T2 0T3.7 1.4T2 2.8T0 4.4T2 6T4 4.4T2 2.8Z',
  '9': 'M.7 6Q3.9 5 3.9 2Q3.9 0 1.9 0T0 1.9T1.9 3.7T3.9 2',
};

const ADVANCE = 5.6;

/** Path elements of the number's figures, their middle at the origin; `height` is that of a figure. */
export function strokeNumber(value: number, height: number): string {
  const figures = [...String(Math.round(Math.abs(value)))];
  const width = figures.length * ADVANCE - (ADVANCE - 4);
  const scale = height / 6;
  const paths = figures.map(
    (figure, index) =>
      `<path d="${FIGURES[figure] ?? ''}" transform="translate(${index * ADVANCE - width / 2} -3)"/>`,
  );
  return `<g transform="scale(${scale})">${paths.join('')}</g>`;
}
