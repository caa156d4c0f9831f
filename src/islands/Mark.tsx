/** Whether an option fits, as a sign and in words: never by colour alone. */
import type { Mark as Kind } from '../configurator/optionRows.ts';
import { useSheet } from './sheet.ts';

const SIGNS: Readonly<Record<Kind, string>> = {
  fits: 'M2.5 8.5l3.5 4 7.5-9',
  care: 'M8 2l6.5 12h-13zM8 6.5v3.5M8 11.8v.8',
  refused: 'M3 3l10 10M13 3L3 13',
  open: 'M3 8h10',
};

/** A sign of one of the marks, hidden from those who hear the words beside it. */
export function Sign({ kind }: { readonly kind: Kind }) {
  return (
    <svg class={`ws-sign ws-${kind}`} viewBox="0 0 16 16" aria-hidden="true">
      <path d={SIGNS[kind]} />
    </svg>
  );
}

export function Mark({ kind }: { readonly kind: Kind }) {
  const { t } = useSheet();
  return (
    <span class={`ws-mark ws-${kind}`}>
      <Sign kind={kind} /> {t(`option.${kind}`)}
    </span>
  );
}
