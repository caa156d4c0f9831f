/** Verdicts are decided on the figures that are shown, so that they are the same everywhere. */

/** To 0.01, half away from zero; for mm, D and prism dioptres. A hair is added against binary halves (1.005). */
export const round2 = (value: number): number => {
  const rounded = (Math.sign(value) * Math.round(Math.abs(value) * 100 + 1e-9)) / 100;
  return rounded === 0 ? 0 : rounded;
};

/** To 0.1, half away from zero; for grams. */
export const round1 = (value: number): number => {
  const rounded = (Math.sign(value) * Math.round(Math.abs(value) * 10 + 1e-9)) / 10;
  return rounded === 0 ? 0 : rounded;
};
