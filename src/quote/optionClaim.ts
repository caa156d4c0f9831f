/**
 * The trade's claims answered: how much thinner and lighter an option comes out than the present one, in this frame
 * with this prescription.
 */
import type { Words } from '../catalogue/catalogue.ts';
import { say, writeDigits } from '../catalogue/words.ts';
import type { LensSituation, Situation } from '../rules/situation.ts';
import type { TradeOff } from './tradeOff.ts';

/** An option with its figures. */
export interface Weighed {
  readonly situation: Situation;
  readonly tradeOff: TradeOff;
}

/** The sentence, in whole percents; null where either has no lens, or nothing differs by as much as one. */
export function optionClaim(words: Words, present: Weighed, other: Weighed): string | null {
  const part = (from: number | null, to: number | null, less: string, more: string) => {
    const percent = from && to ? Math.round((100 * (from - to)) / from) : 0;
    if (percent === 0) return [];
    return [say(words, `worksheet.trade.${percent > 0 ? less : more}`, { percent: Math.abs(percent) })];
  };
  const [from, to] = [present.tradeOff, other.tradeOff];
  const parts = [
    ...part(from.thickestMm, to.thickestMm, 'thinner', 'thicker'),
    ...part(from.massG, to.massG, 'lighter', 'heavier'),
  ];
  if (parts.length === 0) return null;
  const claim = say(words, 'worksheet.trade.claim', { parts: parts.join(', ') });
  const why = againstIndex(words, present.situation, other.situation);
  return why === null ? claim : `${claim} ${why}`;
}

/**
 * Why a denser material comes out thicker, or a less dense one thinner: a wearer pays for the index and expects the
 * contrary. At the same power steeper curves make a thicker lens, and a ready-made lens has the centre that it comes
 * with, however weak it is. null where edges and indices go as expected.
 */
function againstIndex(words: Words, present: Situation, other: Situation): string | null {
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
    parts: parts.join(say(words, 'worksheet.semicolon')),
  });
}

/** The lens with the thickest edge of the pair. */
const thickerLens = ({ right, left }: Situation): LensSituation | null =>
  right.lens && left.lens && (left.lens.thickest.mm > right.lens.thickest.mm ? left.lens : right.lens);
