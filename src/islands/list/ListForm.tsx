/** Above the list of frames: a prescription, and what the list is sorted and filtered by. */
import type { FrameListStores } from '../../configurator/list/frameList.ts';
import { Entering } from '../sheet.ts';
import { ListPrescription } from './ListPrescription.tsx';
import { ListStatus } from './ListStatus.tsx';
import { Sifting } from './Sifting.tsx';
import { List } from './stores.ts';

export function ListForm({ stores }: { readonly stores: FrameListStores }) {
  const { told } = stores;
  return (
    <List.Provider value={stores}>
      <Entering.Provider value={stores}>
        {/* Nothing is sent, so it is no form: Enter must not put what was typed into the address. */}
        <section class="ws-form fl-form" aria-label={told('form')}>
          <details class="fl-entry">
            <summary>{told('open')}</summary>
            <ListPrescription />
          </details>
          <Sifting />
        </section>
        <ListStatus />
      </Entering.Provider>
    </List.Provider>
  );
}
