/** What a verification says in sentences: what is told otherwise now, and what to ask the buyer. */
import { millimetres } from '../figures.ts';
import type { Verification } from '../verify.ts';
import type { Say } from './parts.ts';

/** Key of how a check came out, below `verify`. */
export const heldKey = (holds: boolean | null): 'notHere' | 'holds' | 'open' =>
  holds === null ? 'notHere' : holds ? 'holds' : 'open';

/** Frames with another name, findings and figures that differ, a sentence each. */
export function differenceTexts(t: Say, { moved, findings, figures }: Verification): string[] {
  return [
    ...moved.map(({ pair, from, to }) => t('verify.moved', { pair: pair + 1, from, to })),
    ...findings.map(
      ({ pair, level, message, change }) =>
        `${t(`verify.${change}`)} ${t('verify.ofPair', { pair: pair + 1, level: t(`level.${level}`) })} ${message}`,
    ),
    ...figures.map(({ pair, eye, figure, shown, now }) => {
      const told = (value: number | null) => (value === null ? '–' : millimetres(value));
      const slots = { pair: pair + 1, eye: t(`eye.${eye}`), shown: told(shown), now: told(now) };
      return `${t(`figure.${figure}`)}: ${t('verify.figure', slots)}`;
    }),
  ];
}

/** What to ask the buyer, a sentence each. */
export const callTexts = (t: Say, { calls }: Verification): string[] =>
  calls.map(({ pair, reason, message }) =>
    [pair !== null && t('head.only', { pair: pair + 1 }), reason !== null && t(`call.${reason}`), message]
      .filter((one) => one !== false && one !== '')
      .join(' '),
  );
