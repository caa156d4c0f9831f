/** What a store holds, drawn again when that changes. */
import { listenKeys, type MapStore, type ReadableAtom } from 'nanostores';
import { useEffect, useState } from 'preact/hooks';

/** The value of a store; with `keys`, only changes of those draw again. */
export function useStore<T>(
  store: ReadableAtom<T>,
  { keys }: { readonly keys?: readonly (keyof T)[] } = {},
): T {
  const [, draw] = useState({});
  const shown = store.get();
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const again = () => {
      timer ??= setTimeout(() => {
        timer = undefined;
        draw({});
      });
    };
    // It may have changed since it was drawn.
    if (store.get() !== shown) again();
    const end = keys ? listenKeys(store as unknown as MapStore, keys as never, again) : store.listen(again);
    return () => {
      end();
      clearTimeout(timer);
    };
  }, [store, `${keys}`]);
  return shown;
}
