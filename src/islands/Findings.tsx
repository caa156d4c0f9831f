/** What stands against the pair, what to mind and what to know; before that, what is to be mended or still needed. */
import { useStore } from '@nanostores/preact';
import { say } from '../catalogue/words.ts';
import type { Finding } from '../quote/answer.ts';
import { Sign } from './Mark.tsx';
import { idOf, useSheet } from './sheet.ts';

const SIGNS = { stop: 'refused', caution: 'care', note: 'open' } as const;

export function Findings() {
  const sheet = useSheet();
  const { t } = sheet;
  const { faults, needs, findings } = useStore(sheet.standing);
  return (
    <>
      {faults.length > 0 && (
        <>
          <p class="ws-head">{t('ticket.mendText')}</p>
          <ul class="ws-list">
            {faults.map(({ field, message, expected }) => (
              <li key={`${field} ${message}`}>
                {field === null ? message : <a href={`#${idOf(field)}`}>{message}</a>} {expected}
              </li>
            ))}
          </ul>
        </>
      )}
      {needs.length > 0 && (
        <>
          <p class="ws-head">{t('ticket.needsText')}</p>
          <ul class="ws-list">
            {needs.map((need) => (
              <li key={need}>{need}</li>
            ))}
          </ul>
        </>
      )}
      <ul class="ws-findings">
        {findings.map((finding) => (
          <FindingItem key={`${finding.rule} ${finding.eye} ${finding.message}`} finding={finding} />
        ))}
      </ul>
    </>
  );
}

function FindingItem({ finding }: { readonly finding: Finding }) {
  const { t, data } = useSheet();
  const { rule, level, message } = finding;
  return (
    <li class={`ws-finding ws-${level}`}>
      <p class="ws-finding-title">
        <Sign kind={SIGNS[level]} /> <span class="ws-level">{t(`ticket.${level}`)}</span>{' '}
        {say(data.words, `rule.${rule}.title`)}
      </p>
      <p>{message}</p>
      <details>
        <summary>{t('ticket.why')}</summary>
        <p>{say(data.words, `rule.${rule}.why`)}</p>
      </details>
    </li>
  );
}
