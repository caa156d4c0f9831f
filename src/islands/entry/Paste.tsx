/** A whole prescription as text, read into the fields; what was not understood is marked in it. Loaded on demand. */
import { useState } from 'preact/hooks';
import { type Replaced, replacedBy } from '../../configurator/entry/applyPaste.ts';
import { closingAdd } from '../../configurator/entry/closingAdd.ts';
import { type Paste as Pasted, readPaste } from '../../configurator/entry/readPaste.ts';
import { type Entries, textOf } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import { useEntryStores } from '../sheet.ts';
import { AddOffer } from './AddOffer.tsx';
import { PasteReport } from './PasteReport.tsx';

interface Done {
  readonly text: string;
  readonly pasted: Pasted;
  readonly replaced: readonly Replaced[];
}

/** Entries with their figures as they are written on this page. */
const mapEntries = (entries: Entries, digits: (text: string) => string): Entries =>
  Object.fromEntries(Object.entries(entries).map(([field, text]) => [field, digits(text ?? '')]));

export function Paste() {
  const { t, digits, entries, enter, leave } = useEntryStores();
  const [text, setText] = useState('');
  const [done, setDone] = useState<Done | 'undone' | null>(null);
  const read = () => {
    const found = readPaste(text);
    const pasted = { ...found, entries: mapEntries(found.entries, digits) };
    const replaced = replacedBy(entries.get(), pasted.entries);
    for (const { field, now } of replaced) {
      enter(field, now);
      leave(field);
    }
    setDone({ text, pasted, replaced });
  };
  const undo = (replaced: readonly Replaced[]) => {
    for (const { field, before } of replaced) enter(field, before);
    setDone('undone');
  };
  const lone = done === null || done === 'undone' ? null : closingAdd(done.text, done.pasted);
  const takeForBoth = (add: string, eye: Eye) => {
    if (done === null || done === 'undone') return;
    const field = `${eye}.add` as const;
    const before = textOf(entries.get(), field);
    const read = { ...done.pasted, entries: { ...done.pasted.entries, [field]: add } };
    enter(field, add);
    leave(field);
    const others = done.replaced.filter((one) => one.field !== field);
    const first = done.replaced.find((one) => one.field === field)?.before ?? before;
    setDone({ ...done, pasted: read, replaced: [...others, { field, before: first, now: add }] });
  };
  return (
    <div class="en-paste">
      <label for="ws-paste">{t('entry.paste.label')}</label>
      <textarea
        id="ws-paste"
        rows={4}
        spellcheck={false}
        autocomplete="off"
        value={text}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
        aria-describedby="ws-paste-hint"
      />
      <p class="ws-note" id="ws-paste-hint">
        {t('entry.paste.hint')}
      </p>
      <button type="button" class="ws-button" onClick={read} disabled={text.trim() === ''}>
        {t('entry.paste.read')}
      </button>
      {/* Always there, so that what appears in it is told. */}
      <div role="status">
        {done === 'undone' && <p class="ws-told">{t('entry.paste.undone')}</p>}
        {done !== null && done !== 'undone' && <PasteReport {...done} />}
      </div>
      {done !== null && done !== 'undone' && <AddOffer />}
      {lone && (
        <div class="en-add">
          <p>{t('entry.paste.add-last', { add: lone.add, eye: t(lone.read) })}</p>
          <button type="button" class="ws-take" onClick={() => takeForBoth(lone.add, lone.other)}>
            {t('entry.paste.add-both', { add: lone.add })}
          </button>
        </div>
      )}
      {done !== null && done !== 'undone' && done.replaced.length > 0 && (
        <button type="button" class="ws-button" onClick={() => undo(done.replaced)}>
          {t('entry.paste.undo')}
        </button>
      )}
    </div>
  );
}
