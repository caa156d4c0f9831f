/** A sentence that is accepted by a tick, which holds exactly the words that it stands beside. */
import { textIn } from '../../configurator/order/typed.ts';
import { useStore } from '../useStore.ts';
import { idOf, useOrdering } from './ordering.ts';

interface Props {
  readonly name: string;
  readonly text: string;
}

export function Tick({ name, text }: Props) {
  const { stores } = useOrdering();
  const held = textIn(useStore(stores.form.typed, { keys: [name] }), name);
  return (
    <div class="ws-tick">
      <input
        type="checkbox"
        id={idOf(name)}
        name={name}
        checked={held === text}
        onChange={({ currentTarget }) => stores.form.enter(name, currentTarget.checked ? text : '')}
      />
      <label for={idOf(name)}>{text}</label>
    </div>
  );
}
