/** Where on a lens an angle or a prism points, in words: towards the nose or the temple, up or down. */
import type { Words } from '../catalogue/catalogue.ts';
import { say, writeDigits } from '../catalogue/words.ts';
import { type PolarPrism, prismFromPolar, resolvePrism } from '../optics/prismBase.ts';
import type { Eye } from '../optics/types.ts';

const PLACES = [
  'nasal',
  'nasal-above',
  'above',
  'temporal-above',
  'temporal',
  'temporal-below',
  'below',
  'nasal-below',
] as const;

/** Where on a lens an angle of the front view lies, in eighths: the key of its name. The right lens's nose is at 0. */
export function placeOnLens(eye: Eye, atDeg: number): (typeof PLACES)[number] {
  const fromNoseDeg = eye === 'right' ? atDeg : 180 - atDeg;
  const eighth = Math.round((((fromNoseDeg % 360) + 360) % 360) / 45) % 8;
  return PLACES[eighth] ?? 'nasal';
}

/** The same in the shop's words, such as `temple side, below`. */
export const shownPlace = (words: Words, eye: Eye, atDeg: number): string =>
  say(words, `worksheet.place.${placeOnLens(eye, atDeg)}`);

/** A prism by its two components, to 0.01 prism dioptre, such as `0.45 Δ base in and 0.20 Δ base up`. */
export function shownPrism(words: Words, eye: Eye, prism: PolarPrism): string {
  const { horizontal, vertical } = resolvePrism(eye, prismFromPolar(prism));
  const all = [horizontal, vertical].map(({ amount, base }) => ({ amount: amount.toFixed(2), base }));
  const some = all.filter(({ amount }) => Number(amount) > 0);
  const [one = '', other] = (some.length > 0 ? some : all.slice(0, 1)).map(({ amount, base }) =>
    say(words, `eye.prism.${base}`, { amount: writeDigits(words, amount) }),
  );
  return other === undefined ? one : say(words, 'eye.prism.both', { one, other });
}
