/** An add that the present use leaves out: the uses that take it, each a click away. */
import type { Field } from '../../configurator/fields.ts';
import { idOf, useEntryStores, useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';

const ADDS: Field[] = ['right.add', 'left.add'];
const TAKING = ['all', 'near'] as const;

export function AddOffer() {
  const { t, chosen, data } = useSheet();
  const { enter, entries } = useEntryStores();
  const use = useStore(chosen.use);
  const typed = useStore(entries, { keys: [...ADDS, 'design'] });
  const hasAdd = ADDS.some((field) => /[1-9]/.test(typed[field] ?? ''));
  if (use !== 'distance' || !hasAdd) return null;
  const take = (wanted: (typeof TAKING)[number]) => {
    const design = data.designs.find(({ id }) => id === typed.design);
    // A design that does not serve the new use would only be refused.
    if (design && !design.uses.includes(wanted)) enter('design', '');
    enter('use', wanted);
    document.getElementById(`${idOf('use')}-${wanted}`)?.focus();
  };
  return (
    <div class="en-add">
      <p>{t('entry.add.unused')}</p>
      {TAKING.map((wanted) => (
        <button key={wanted} type="button" class="ws-take" onClick={() => take(wanted)}>
          {t('entry.add.take', { use: t(`use.${wanted}`) })}
        </button>
      ))}
    </div>
  );
}
