/** The box whose tick takes what was entered along to the frame that is opened. */
import { useStore } from '../useStore.ts';
import { useList } from './stores.ts';

export function TakeAlong() {
  const { told, kept, taken } = useList();
  const ticked = useStore(taken);
  // What is kept on the device is there on every frame's page anyway.
  if (useStore(kept)) return null;
  return (
    <div class="fl-keeping">
      <div class="ws-tick">
        <input
          type="checkbox"
          id="fl-take"
          checked={ticked}
          onChange={({ currentTarget }) => taken.set(currentTarget.checked)}
          aria-describedby="fl-take-text"
        />
        <label for="fl-take">{told('take')}</label>
      </div>
      <p class="ws-note" id="fl-take-text">
        {told('takeText')}
      </p>
    </div>
  );
}
