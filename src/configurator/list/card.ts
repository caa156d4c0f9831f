/** What a card says of its frame with the prescription entered: marks and texts, ready to be shown. */
import type { Finding } from '../../quote/answer.ts';
import type { FrameAnswer } from '../../quote/frameList.ts';
import type { Mark } from '../optionRows.ts';
import type { Answers } from './order.ts';

export interface Card {
  readonly mark: Exclude<Mark, 'open'>;
  /** Key of the verdict's text, without its leading `list.`. */
  readonly verdict: 'fits' | 'care' | 'refused';
  /** The sentence of the first stop; null where the pair can be made. */
  readonly reason: string | null;
  /** Rules that ask for care with this frame alone, each once. */
  readonly mind: readonly string[];
  /** null where nothing can be made. */
  readonly figures: {
    readonly size: string;
    /** Design and material that the figures are of. */
    readonly lenses: string;
    readonly thickestMm: number | null;
    readonly totalMinor: number | null;
  } | null;
}

const MARKS = { makeable: 'fits', care: 'care', refused: 'refused' } as const;

/** The card of an answer; `shared` are told above the list and not again on each card. */
export function cardOf(
  { verdict, findings, sizeName, lenses, thickestMm, totalMinor }: FrameAnswer,
  shared: readonly Finding[],
): Card {
  const mark = MARKS[verdict];
  const own = findings.filter((finding) => !shared.some((one) => one.message === finding.message));
  const refused = verdict === 'refused';
  return {
    mark,
    verdict: mark,
    reason: refused ? (findings[0]?.message ?? null) : null,
    mind: refused ? [] : [...new Set(own.map(({ rule }) => rule))],
    figures: refused ? null : { size: sizeName, lenses: lenses.join(', '), thickestMm, totalMinor },
  };
}

/** Cautions that every frame which can be made has alike; none where there are fewer than two such frames. */
export function sharedCautions(answers: Answers): readonly Finding[] {
  const [first, ...rest] = [...answers.values()].filter(({ verdict }) => verdict !== 'refused');
  if (first === undefined || rest.length === 0) return [];
  return first.findings.filter(({ message }) =>
    rest.every(({ findings }) => findings.some((one) => one.message === message)),
  );
}
