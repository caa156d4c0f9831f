/** What a card says of its frame with the prescription entered: marks and texts, ready to be shown. */
import type { Finding } from '../../quote/answer.ts';
import type { FrameAnswer } from '../../quote/frameList.ts';
import type { Mark } from '../optionRows.ts';
import type { Answers } from './order.ts';

export interface Card {
  readonly mark: Exclude<Mark, 'open'>;
  /** Key of the verdict's text, without its leading `list.`. */
  readonly verdict: 'fits' | 'care' | 'refused';
  /** The first stop, or what is to be minded of this frame alone. */
  readonly reasons: readonly string[];
  /** null where nothing can be made. */
  readonly figures: {
    readonly size: string;
    readonly thickestMm: number | null;
    readonly totalMinor: number | null;
  } | null;
}

const MARKS = { makeable: 'fits', care: 'care', refused: 'refused' } as const;

/** The card of an answer; `shared` are told above the list and not again on each card. */
export function cardOf(
  { verdict, findings, request, thickestMm, totalMinor }: FrameAnswer,
  shared: readonly Finding[],
): Card {
  const mark = MARKS[verdict];
  const own = findings.filter((finding) => !shared.some((one) => one.message === finding.message));
  const refused = verdict === 'refused';
  return {
    mark,
    verdict: mark,
    reasons: (refused ? findings.slice(0, 1) : own).map(({ message }) => message),
    figures: refused ? null : { size: request.size ?? '', thickestMm, totalMinor },
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
