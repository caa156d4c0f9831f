/** Beside the lines of both eyes: text to paste, the other form of writing, and the powers of the use. */
import { useRef, useState } from 'preact/hooks';
import type { Entries, Field } from '../../configurator/fields.ts';
import { useEntry, useEntryStores } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import { Later, LaterDetails } from './Later.tsx';

/** A prescription as text. */
export function PasteSlot() {
  const { t } = useEntryStores();
  return (
    <LaterDetails summary={t('entry.paste.open')} load={() => import('./Paste.tsx').then((m) => m.Paste)} />
  );
}

const MINUS = /^\s*[-\u2212\u2013]/;

/** Writes both eyes with the other sign of cylinder; pressed again, as they were to the letter. */
export function FormSwitch() {
  const stores = useEntryStores();
  const { t } = stores;
  const cylinders = [useEntry('right.cylinder'), useEntry('left.cylinder')];
  const [told, tell] = useState<readonly string[]>([]);
  const last = useRef<{ readonly before: Entries; readonly written: Entries } | null>(null);
  const toMinus = !cylinders.some((text) => MINUS.test(text)) && cylinders.some((text) => text.trim() !== '');
  const turn = async () => {
    const { FORM_FIELDS, otherForm } = await import('../../configurator/entry/otherForm.ts');
    const now = stores.entries.get();
    const other = otherForm(now);
    const texts = (entries: Entries) => FORM_FIELDS.map((field) => entries[field] ?? '');
    const untouched = last.current !== null && texts(now).join('|') === texts(last.current.written).join('|');
    const next = untouched && last.current !== null ? last.current.before : { ...now, ...other.entries };
    last.current = { before: now, written: next };
    for (const field of FORM_FIELDS)
      if ((now[field] ?? '') !== (next[field] ?? '')) stores.enter(field, next[field] ?? '');
    tell([
      t(`entry.form.${other.to === null ? 'none' : `to-${other.to}`}`),
      ...other.unread.map((eye) => t('entry.form.unread', { eye: t(eye) })),
    ]);
  };
  return (
    <div class="en-form">
      <button
        type="button"
        class="ws-button"
        onClick={() => void turn().catch(() => tell([t('entry.failed')]))}
      >
        {t(`entry.form.${toMinus ? 'minus' : 'plus'}`)}
      </button>
      <output class="ws-told">{told.join(' ')}</output>
    </div>
  );
}

const SPHERES: Field[] = ['right.sphere', 'left.sphere'];

/** Whether any power was entered. */
export function useHasPower(): boolean {
  const entries = useStore(useEntryStores().entries, { keys: SPHERES });
  return SPHERES.some((field) => (entries[field] ?? '').trim() !== '');
}

const useHasAdd = () => useEntry('right.add') + useEntry('left.add') !== '';

/** What the use orders instead of the powers for distance. */
export const UseSlot = () => (
  <>
    <Later load={() => import('./AddOffer.tsx').then((m) => m.AddOffer)} wanted={useHasAdd()} />
    <Later load={() => import('./Consequences.tsx').then((m) => m.UseLine)} wanted={useHasPower()} />
  </>
);
