/** What keeps a pair from being ordered: an entry that is to be mended or is missing, or what stops it. */
import { foldEyes } from '../../configurator/foldEyes.ts';
import type { Standing } from '../../configurator/standing.ts';
import { useOrdering } from './ordering.ts';

export function Waits({ standing: { faults, needs, findings } }: { readonly standing: Standing }) {
  const { telling } = useOrdering();
  const stops = foldEyes(
    telling.words,
    findings.filter(({ level }) => level === 'stop'),
  );
  const told = [
    ...faults.map(({ message, expected }) => telling.t('fault.expected', { message, expected })),
    ...needs,
    ...stops.map(({ message }) => message),
  ];
  if (told.length === 0) return null;
  return (
    <ul class="or-waits">
      {told.map((text) => (
        <li key={text} class="ws-fault">
          {text}
        </li>
      ))}
    </ul>
  );
}
