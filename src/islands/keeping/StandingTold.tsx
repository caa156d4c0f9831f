/** A verdict, and what stands behind it, where several pairs are told at once. */
import { foldEyes } from '../../configurator/foldEyes.ts';
import type { Standing } from '../../configurator/standing.ts';
import { Sign } from '../Mark.tsx';
import { STANDING_SIGNS, sentenceOf } from '../sentence.ts';
import type { Telling } from './telling.ts';

const LEVELS = { stop: 'refused', caution: 'care', note: 'open' } as const;

interface Props {
  readonly telling: Telling;
  readonly standing: Standing;
}

export function VerdictTold({ telling: { t, words }, standing }: Props) {
  return (
    <p class={`sh-verdict ws-verdict-${standing.kind}`}>
      <Sign kind={STANDING_SIGNS[standing.kind]} /> {sentenceOf({ t, data: { words } }, standing)}
    </p>
  );
}

interface FoundProps extends Props {
  /** Notes by their titles alone. */
  readonly brief?: boolean;
}

/** What is to be mended or still needed, then the findings. */
export function StandingTold({ telling, standing: { faults, needs, findings }, brief = false }: FoundProps) {
  const { say, t, words } = telling;
  const asked = [
    ...faults.map(({ message, expected }) => t('fault.expected', { message, expected })),
    ...needs.map(({ message }) => say('compare.needs', { need: message })),
  ];
  if (asked.length === 0 && findings.length === 0) return <p>{say('compare.nothing')}</p>;
  const told = foldEyes(words, findings).filter(
    // Both eyes have the same title.
    ({ rule, level }, at, all) =>
      !brief || level !== 'note' || all.findIndex((one) => one.rule === rule && one.level === level) === at,
  );
  return (
    <ul class="sh-found">
      {asked.map((text) => (
        <li key={text}>{text}</li>
      ))}
      {told.map(({ rule, level, message }) => (
        <li key={`${rule} ${message}`} class={`ws-finding ws-${level}`}>
          <span class="ws-finding-title">
            <Sign kind={LEVELS[level]} /> {say(`compare.${level}`) + t('colon')}
          </span>
          {brief && level === 'note' ? say(`rule.${rule}.title`) : message}
        </li>
      ))}
    </ul>
  );
}
