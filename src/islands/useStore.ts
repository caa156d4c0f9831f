/** What a store holds, drawn again when that changes. */
import { listenKeys, type MapStore, type ReadableAtom } from 'nanostores';
import { useEffect, useState } from 'preact/hooks';
import { inTurn, outOfTurn, type Turn } from './inTurn.ts';

interface Wanted<T> {
  /** Only changes of these are drawn. */
  readonly keys?: readonly (keyof T)[];
  readonly turn?: Turn;
}

/** The value of a store. What changed is drawn in turn with all other parts of the page. */
export function useStore<T>(store: ReadableAtom<T>, { keys, turn = 'next' }: Wanted<T> = {}): T {
  const [, set] = useState({});
  const [draw] = useState(() => () => set({}));
  outOfTurn(draw);
  const shown = store.get();
  useEffect(() => {
    const again = () => inTurn(draw, turn);
    // It may have changed since it was drawn.
    if (store.get() !== shown) again();
    const end = keys ? listenKeys(store as unknown as MapStore, keys as never, again) : store.listen(again);
    return () => {
      end();
      outOfTurn(draw);
    };
  }, [store, `${keys}`]);
  return shown;
}
