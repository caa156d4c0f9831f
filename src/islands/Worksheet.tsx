/** The worksheet of one frame: everything on one sheet, the ticket beside it. */
import type { ComponentChild, ComponentType } from 'preact';
import { USES } from '../catalogue/design.ts';
import { REPORTED_KINDS } from '../configurator/optionKinds.ts';
import type { Worksheet as Stores } from '../configurator/worksheet.ts';
import { WEARERS } from '../quote/request.ts';
import { Choice } from './Choice.tsx';
import { FrameChoice } from './FrameChoice.tsx';
import { Keeping } from './Keeping.tsx';
import { Measures } from './Measures.tsx';
import { type ListProps, OptionPlace } from './OptionPlace.tsx';
import { Prescription } from './Prescription.tsx';
import { Show } from './Show.tsx';
import { Sheet, useSheet } from './sheet.ts';
import { Terms } from './Terms.tsx';
import { Ticket } from './Ticket.tsx';
import { useStore } from './useStore.ts';

interface Props {
  readonly stores: Stores;
  /** In the place of the choice of size and colourway. */
  readonly front?: ComponentChild;
  /** In the place of the form's other parts: they are alike on many pages, and a build renders them once. */
  readonly others?: ComponentChild;
}

export function Worksheet({ stores, front, others }: Props) {
  const { t } = stores;
  const toTicket = (event: Event) => {
    event.preventDefault();
    document.getElementById('ws-ticket')?.focus();
  };
  return (
    <Sheet.Provider value={stores}>
      {/* `dialog`: Enter leads to the verdict, and never puts what was typed into the address. */}
      <form class="ws-form" method="dialog" autocomplete="off" noValidate onSubmit={toTicket}>
        <section class="ws-part" aria-labelledby="ws-frame">
          <h3 id="ws-frame">{t('frame.legend')}</h3>
          {front ?? <FrameChoice />}
        </section>
        {others ?? <OtherParts />}
        <button type="submit" class="ws-button ws-go">
          {t('ticket.go')}
        </button>
      </form>
      <Ticket />
    </Sheet.Provider>
  );
}

/** All parts of the form but the first. A build gives the lists themselves, the browser their places. */
export function OtherParts({ List = OptionPlace }: { readonly List?: ComponentType<ListProps> }) {
  return (
    <>
      <People />
      <Prescription />
      <Measures />
      <Show />
      {REPORTED_KINDS.map((kind) => (
        <List key={kind} kind={kind} />
      ))}
      <Terms />
      <Keeping />
    </>
  );
}

/** Who wears the pair, and what for. */
function People() {
  const sheet = useSheet();
  const { t } = sheet;
  const wearer = useStore(sheet.chosen.wearer);
  const use = useStore(sheet.chosen.use);
  return (
    <section class="ws-part" aria-label={t('use.legend')}>
      <Choice
        name="use"
        legend={t('use.legend')}
        chosen={use}
        options={USES.map((value) => ({ value, label: t(`use.${value}`) }))}
      />
      <Choice
        name="wearer"
        legend={t('wearer.legend')}
        chosen={wearer}
        options={WEARERS.map((value) => ({ value, label: t(`wearer.${value}`) }))}
      />
      {wearer !== 'adult' && <p class="ws-note">{t('wearer.impact')}</p>}
    </section>
  );
}
