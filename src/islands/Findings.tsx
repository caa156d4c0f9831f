/** What stands against the pair, what to mind and what to know; before that, what is to be mended or still needed. */
import { say } from '../catalogue/words.ts';
import { fieldName } from '../configurator/fieldName.ts';
import type { Field } from '../configurator/fields.ts';
import { foldEyes } from '../configurator/foldEyes.ts';
import { isShopsWork } from '../configurator/shopsWork.ts';
import type { Finding } from '../quote/answer.ts';
import { Sign } from './Mark.tsx';
import { idOf, useSheet } from './sheet.ts';
import { useAdvice } from './useAdvice.ts';
import { useStore } from './useStore.ts';

const SIGNS = { stop: 'refused', caution: 'care', note: 'open' } as const;

type Parts = typeof import('./Advice.tsx');

export function Findings() {
  const sheet = useSheet();
  const { t, data } = sheet;
  const { faults, needs, findings } = useStore(sheet.standing);
  const waiting = useStore(sheet.advice).kind === 'waiting';
  const loaded = useAdvice();
  const parts = loaded === 'failed' ? null : loaded;
  return (
    <>
      {faults.length > 0 && (
        <>
          <p class="ws-head">{t('ticket.mendText')}</p>
          <ul class="ws-list">
            {faults.map(({ field, message, expected }) => (
              <li key={`${field} ${message}`}>
                {field !== null && <FieldLink field={field} />}
                {t('fault.expected', { message, expected })}
              </li>
            ))}
          </ul>
        </>
      )}
      {needs.length > 0 && (
        <>
          <p class="ws-head">{t('ticket.needsText')}</p>
          <ul class="ws-list">
            {needs.map(({ field, message }) => (
              <li key={`${field} ${message}`}>
                {field !== null && <FieldLink field={field} />}
                {message}
              </li>
            ))}
          </ul>
        </>
      )}
      <ul class="ws-findings" aria-busy={waiting}>
        {foldEyes(data.words, findings).map((finding) => (
          <FindingItem
            key={`${finding.rule} ${finding.eye} ${finding.message}`}
            finding={finding}
            parts={parts}
          />
        ))}
      </ul>
    </>
  );
}

/** On a narrow screen, where the list is folded away: links to every entry that is to be mended or still needed. */
export function Leads() {
  const { faults, needs } = useStore(useSheet().standing, { turn: 'first' });
  const fields = new Set([...faults, ...needs].map(({ field }) => field));
  if (fields.size === 0) return null;
  return (
    <ul class="ws-leads">
      {[...fields].map((field) => field && <li key={field}>{<FieldLink field={field} bare />}</li>)}
    </ul>
  );
}

/** Leads to a field without putting anything into the address. */
function FieldLink({ field, bare = false }: { readonly field: Field; readonly bare?: boolean }) {
  const { t } = useSheet();
  const id = idOf(field);
  const go = (event: Event) => {
    event.preventDefault();
    // The PD may be asked for as one number.
    const at = document.getElementById(id) ?? document.getElementById(idOf('pd.both'));
    at?.focus();
  };
  return (
    <>
      <a href={`#${id}`} onClick={go}>
        {fieldName(t, field)}
      </a>
      {!bare && t('colon')}
    </>
  );
}

function FindingItem({ finding, parts }: { readonly finding: Finding; readonly parts: Parts | null }) {
  const { t, data } = useSheet();
  const { rule, level, message } = finding;
  return (
    <li class={`ws-finding ws-${level}`}>
      <p class="ws-finding-title">
        <Sign kind={SIGNS[level]} />{' '}
        {t('ticket.named', {
          level: t(isShopsWork(finding) ? 'ticket.ours' : `ticket.${level}`),
          title: say(data.words, `rule.${rule}.title`),
        })}
      </p>
      <p>{message}</p>{' '}
      <details>
        <summary>{t('ticket.why')}</summary>
        <p>{say(data.words, `rule.${rule}.why`)}</p>
      </details>
      {parts && <parts.Remedies finding={finding} />}
    </li>
  );
}
