/** What may be told while the shopper's own frame is not known: prices of lenses, and nothing that hangs on a frame. */
import type { Answer } from '../../quote/answer.ts';
import type { OptionReport } from '../../quote/options.ts';
import type { Told } from '../answering.ts';
import type { Engine } from '../consult.ts';
import type { Worksheet } from '../worksheet.ts';

/** An answer without anything of the frame that only stands in. */
export function priceOnly(answer: Answer): Answer {
  return {
    ...answer,
    verdict: 'makeable',
    pairs: answer.pairs.map((pair) => ({
      ...pair,
      verdict: 'makeable',
      findings: pair.findings.filter(({ rule }) => rule === 'prescription-incomplete'),
      right: null,
      left: null,
    })),
  };
}

/** Reports on options in the same way. */
export const pricesOnly = (reports: readonly OptionReport[]): readonly OptionReport[] =>
  reports.map((report) => ({
    ...report,
    verdict: 'makeable',
    findings: [],
    thickestMm: null,
    massG: null,
    tradeOff: report.tradeOff && {
      ...report.tradeOff,
      thickestMm: null,
      beyondRimMm: null,
      centreMm: null,
      massG: null,
      sharpDeg: null,
    },
  }));

/** An engine of which is heard only what may be told, as long as the frame is not known. */
export const untilKnown = (engine: Engine, { read }: Pick<Worksheet, 'read'>): Engine => ({
  ...engine,
  listen: (heard) =>
    engine.listen((told) => {
      for (const one of read.get().waits ? withoutFrame(told) : [told]) heard(one);
    }),
});

function withoutFrame(told: Told): readonly Told[] {
  if (told.kind === 'drawings' || told.kind === 'advice') return [];
  if (told.kind !== 'reply') return [{ ...told, reports: pricesOnly(told.reports) }];
  if (!told.reply.ok) return [told];
  const answer = priceOnly(told.reply.answer);
  const [pair = null] = answer.pairs;
  // Nothing is looked for: no advice holds for a frame that is not known.
  return [
    { ...told, reply: { ok: true, answer } },
    { serial: told.serial, kind: 'advice', pair, models: {} },
  ];
}
