/** Whether the basket is kept on the device; and forgetting everything. */
import type { BasketStores } from '../../configurator/basket/basketStores.ts';
import { KeepAndForget } from '../keeping/KeepAndForget.tsx';
import type { Telling } from '../keeping/telling.ts';
import { useStore } from '../useStore.ts';

interface Props {
  readonly stores: BasketStores;
  readonly telling: Telling;
  readonly tell: (text: string) => void;
}

export function BasketKeeping({ stores, telling: { say, t }, tell }: Props) {
  const kept = useStore(stores.onDevice);
  const refused = useStore(stores.refused);
  return (
    <KeepAndForget
      id="bk-keep"
      label={say('basket.keep')}
      text={refused ? say('basket.refused') : say('basket.keepText')}
      kept={kept}
      keep={stores.keep}
      clear={stores.clear}
      say={say}
      tell={tell}
    >
      <p class="ws-note">{t('ticket.safety')}</p>
    </KeepAndForget>
  );
}
