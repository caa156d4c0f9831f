/** Whether what is typed is kept in the tab; and forgetting everything. */
import { KeepAndForget } from '../keeping/KeepAndForget.tsx';
import { useStore } from '../useStore.ts';
import { useOrdering } from './ordering.ts';

export function OrderKeeping({ tell }: { readonly tell: (text: string) => void }) {
  const { stores, telling, o } = useOrdering();
  const kept = useStore(stores.form.kept);
  const refused = useStore(stores.form.refused);
  return (
    <KeepAndForget
      id="or-keep"
      label={o('keep')}
      text={refused ? o('keepRefused') : o('keepText')}
      kept={kept}
      keep={stores.form.keep}
      clear={stores.clear}
      say={telling.say}
      tell={tell}
    />
  );
}
