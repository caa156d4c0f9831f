/** The whole page: files and keys, what is kept, the work in hand, and the order that is open. */
import { useStore } from '../useStore.ts';
import type { Bench } from './bench.ts';
import { FileReport } from './FileReport.tsx';
import { InHand } from './InHand.tsx';
import { Intake } from './Intake.tsx';
import { Keep } from './Keep.tsx';
import { OpenOrder } from './OpenOrder.tsx';
import { OnBench } from './useBench.ts';

export function Workroom({ bench }: { readonly bench: Bench }) {
  const said = useStore(bench.said);
  const held = useStore(bench.held);
  const chosen = useStore(bench.chosen);
  const open = held.find(({ id }) => id === chosen);
  return (
    <OnBench.Provider value={bench}>
      <div class="wr-top">
        <Intake />
        <Keep />
      </div>
      <FileReport />
      <div class="wr-room">
        <InHand />
        {open === undefined ? (
          <p class="wr-none ws-note">{bench.t('order.none')}</p>
        ) : (
          <OpenOrder key={open.id} held={open} />
        )}
      </div>
      <output class="ws-unseen" aria-live="polite">
        {said}
      </output>
    </OnBench.Provider>
  );
}
