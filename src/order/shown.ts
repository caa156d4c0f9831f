/** What of an answer an order keeps: what the buyer saw and chose by, in a form that outlives the answer's own. */
import type { Answer, LensAnswer, PairAnswer } from '../quote/answer.ts';
import type { Shown, ShownLens, ShownPair } from './order.ts';

/** An answer as an order keeps it. */
export function shownOf({ verdict, pairs, price }: Answer): Shown {
  const { currency, total } = price;
  const lines = price.lines.map(({ kind, pair, label, amount, source }) => ({
    kind,
    pair,
    label,
    amount,
    source,
  }));
  return { verdict, pairs: pairs.map(shownPair), price: { currency, lines, total } };
}

function shownPair({ verdict, findings, right, left }: PairAnswer): ShownPair {
  return {
    verdict,
    findings: findings.map(({ rule, level, eye, figures, message }) => ({
      rule,
      level,
      eye,
      figures,
      message,
    })),
    right: right && shownLens(right),
    left: left && shownLens(left),
  };
}

const shownLens = ({ baseCurveD, centreThicknessMm, edgeThicknessMm, massG }: LensAnswer): ShownLens => ({
  baseCurveD,
  centreThicknessMm,
  thickestMm: edgeThicknessMm.thickest.mm,
  thinnestMm: edgeThicknessMm.thinnest.mm,
  massG,
});
