/**
 * Why a denser material comes out thicker, or a less dense one thinner: a wearer pays for the index and expects the
 * contrary. At the same power steeper curves make a thicker lens, and a ready-made lens has the centre that it comes
 * with, however weak it is.
 */
import type { Words } from '../catalogue/catalogue.ts';
import { say, writeDigits } from '../catalogue/words.ts';
import type { LensSituation, Situation } from '../rules/situation.ts';

/** A sentence on `other` in the place of `present`; null where edges and indices go as expected, to a whole percent. */
export function againstIndex(words: Words, present: Situation, other: Situation): string | null {
  const [from, to] = [thickerLens(present), thickerLens(other)];
  if (from === null || to === null) return null;
  const percent = Math.round((100 * (to.thickest.mm - from.thickest.mm)) / from.thickest.mm);
  const denser = Math.sign(other.material.ne - present.material.ne);
  if (percent === 0 || denser !== Math.sign(percent)) return null;
  const figures = (a: number, b: number) => ({
    from: writeDigits(words, a.toFixed(2)),
    to: writeDigits(words, b.toFixed(2)),
  });
  const part = (key: string, a: number, b: number) =>
    Math.sign(b - a) === denser ? [say(words, `worksheet.trade.against.${key}`, figures(a, b))] : [];
  const readyMade = (denser > 0 ? to : from).blank.kind === 'stock';
  const parts = [
    ...part('curve', from.baseCurveD, to.baseCurveD),
    ...part(readyMade ? 'ready-made' : 'centre', from.centreThicknessMm, to.centreThicknessMm),
  ];
  if (parts.length === 0) return null;
  return say(words, `worksheet.trade.against.${denser > 0 ? 'thicker' : 'thinner'}`, {
    parts: parts.join('; '),
  });
}

/** The lens with the thickest edge of the pair. */
const thickerLens = ({ right, left }: Situation): LensSituation | null =>
  right.lens && left.lens && (left.lens.thickest.mm > right.lens.thickest.mm ? left.lens : right.lens);
