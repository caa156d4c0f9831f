/** Pictures and PDFs of a prescription: chosen, listed, taken away. */
import { useState } from 'preact/hooks';
import { type NotAttached, sizeOf } from '../../configurator/order/attaching.ts';
import { ofPair } from '../../configurator/order/typed.ts';
import { useStore } from '../useStore.ts';
import { idOf, useOrdering } from './ordering.ts';

export function Attachments({ id }: { readonly id: number }) {
  const { stores, parts, telling, o } = useOrdering();
  const files = useStore(stores.form.files)[id] ?? [];
  const not = useStore(stores.form.notTaken)[id] ?? [];
  const [told, tell] = useState('');
  const name = ofPair(id, 'files');
  const mega = (bytes: number, digits: number) => telling.figures.fixed(bytes / 1e6, digits);
  const why = ({ code }: NotAttached) => {
    if (code === 'many') return o('attachMany', { most: parts.MOST_ATTACHMENTS });
    return code === 'unread' ? o('attachUnread') : telling.say(`order.attachment.${code}`);
  };
  return (
    <div class="ws-field or-field or-wide">
      <label for={idOf(name)}>{o('attach')}</label>
      <input
        type="file"
        id={idOf(name)}
        multiple
        accept="image/jpeg,image/png,image/webp,image/heic,application/pdf"
        aria-describedby={`${idOf(name)}-note ${idOf(name)}-told`}
        onChange={async ({ currentTarget }) => {
          tell('');
          await stores.form.attach(id, [...(currentTarget.files ?? [])]);
          // So that the same file can be chosen again.
          currentTarget.value = '';
        }}
      />
      <p class="ws-told" id={`${idOf(name)}-note`}>
        {o('attachNote', { most: mega(parts.MOST_ATTACHED_BYTES, 0) })}
      </p>
      <div id={`${idOf(name)}-told`} aria-live="polite">
        {not.map((one) => (
          <p class="ws-told ws-fault" key={one.name}>
            {o('attachFault', { name: one.name, why: why(one) })}
          </p>
        ))}
        {told !== '' && <p class="ws-told">{told}</p>}
      </div>
      {files.length > 0 && (
        <ul class="or-files" aria-label={o('attachedFiles')}>
          {files.map((file, index) => (
            <li key={`${index} ${file.name}`}>
              <span>{o('attached', { name: file.name, size: mega(sizeOf(file), 2) })}</span>
              <button
                type="button"
                class="ws-button"
                aria-label={o('attachRemoveLabel', { name: file.name })}
                onClick={() => {
                  stores.form.detach(id, index);
                  tell(o('attachRemoved', { name: file.name }));
                  // The button that was pressed is gone.
                  document.getElementById(idOf(name))?.focus();
                }}
              >
                {o('attachRemove')}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
