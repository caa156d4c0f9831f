/** The stores of the order page: the basket, the form, what is open, and what became of sending it. */
import { atom, computed } from 'nanostores';
import type { Words } from '../../catalogue/catalogue.ts';
import type { Delivery } from '../../catalogue/orderTerms.ts';
import type { Shop } from '../../catalogue/shop.ts';
import { type BasketSource, createBasket } from '../basket/basketStores.ts';
import type { Device, Outcome } from './delivering.ts';
import { draftOf, wholeDraft } from './draftOf.ts';
import { createForm, type FormSource } from './formStores.ts';
import type { Gone } from './keptOrder.ts';
import type { MadeFile } from './madeFile.ts';
import { openItems } from './openItems.ts';
import { orderedPairs } from './orderedPairs.ts';
import type { OrderingShop } from './orderParts.ts';
import { snapshotOf } from './snapshot.ts';
import { type TypedFault, typedFaults } from './typedFaults.ts';

export interface OrderSource extends BasketSource, FormSource {
  readonly shop: OrderingShop & Pick<Shop, 'contact'>;
  readonly shopVersion: string;
  readonly words: Words;
  readonly device: Device;
}

/** What the shopper is told of sending; its sentence is `orderPage.state.<code>`. */
export interface SendState {
  readonly code: Outcome['code'] | 'nothing' | 'open' | 'making' | 'sending' | 'unsealed' | 'already';
  readonly status: number;
}

const NO_FAULTS: readonly TypedFault[] = [];
const told = (code: SendState['code']): SendState => ({ code, status: 0 });
const isGone = (code: SendState['code']): code is Gone['how'] =>
  code === 'saved' || code === 'mailed' || code === 'shared' || code === 'posted';

/** What makes files and sends them: loaded once something is entered, since nobody may be online by the end. */
const loadSending = () => import('./sending.ts');

export type OrderStores = ReturnType<typeof createOrder>;

/** All that the order page shows and does. */
export function createOrder(source: OrderSource) {
  const { parts, shop, shopVersion, words, device } = source;
  const basket = createBasket(source);
  const form = createForm(source);
  const { typed, files, number, gone, kept } = form;
  const draft = computed([basket.answered, typed, files, number], (answered, now, attached, its) =>
    answered === null
      ? null
      : draftOf({ parts, shop, shopVersion, words, number: its, typed: now, files: attached, answered }),
  );
  const faults = computed([basket.answered, typed], (answered, now) => {
    const pairs = answered === null ? [] : orderedPairs(answered);
    const prescribed = pairs.map(({ id, request }) => ({ id, prescribed: request.prescription !== null }));
    const found = typedFaults(parts, now, prescribed);
    // The same empty list each time, so that no field is drawn again while all is well.
    return found.length === 0 ? NO_FAULTS : found;
  });
  const open = computed([basket.answered, draft, faults], (answered, now, wrong) => {
    if (answered === null) return [];
    const lacks =
      now === null
        ? answered.basket.pairs.map(({ frame }) => ({ code: 'gone' as const, of: frame }))
        : parts.missingOf({ shop }, now);
    return openItems({ shop, words }, answered, typed.get(), wrong, lacks);
  });
  const snapshot = computed([typed, files, basket.answered], snapshotOf);
  const state = atom<SendState>(told(gone.get()?.how ?? 'nothing'));
  const isBusy = computed(state, ({ code }) => code === 'making' || code === 'sending');
  const changed = computed(
    [gone, snapshot, basket.answered],
    // Until the basket has its answer, nothing can be compared.
    (left, now, answered) => left !== null && answered !== null && left.of !== now,
  );
  // Made once for a state of the form, so that a second try sends the very same file.
  let made: (MadeFile & { readonly of: string }) | null = null;
  /** The mail that asks to attach the last file; null: none was made here. */
  const mail = atom<string | null>(null);
  const leave = (how: Gone['how'], { of, file, digest }: NonNullable<typeof made>) => {
    const before = gone.get();
    // One that arrived stays told as such when its file is also saved.
    if (before?.how === 'posted' && before.of === of) return;
    form.leave({ how, file: file.name, digest, of });
  };
  const tryTo = async (way: Delivery): Promise<SendState> => {
    const now = draft.get();
    const whole = now && wholeDraft(now);
    if (whole === null || open.get().length > 0) return told('open');
    const of = snapshot.get();
    const before = gone.get();
    if (way === 'post' && before?.how === 'posted' && before.of === of) return told('already');
    state.set(told('making'));
    try {
      const { asText, deliver, makeFile } = await loadSending();
      if (made?.of !== of) made = { of, ...(await makeFile({ shop, words }, whole)) };
      const file = made;
      mail.set(file.mail);
      if (way === 'post') state.set(told('sending'));
      const outcome = await deliver(device, way, {
        file: file.file,
        text: () => asText(file),
        mail: file.mail,
        postTo: shop.order.postTo,
      });
      if (isGone(outcome.code)) leave(outcome.code, file);
      return outcome;
    } catch (error) {
      console.error(error);
      return told('unsealed');
    }
  };
  return {
    basket,
    form,
    draft,
    faults,
    /** What is missing or wrong, each with its field. */
    open,
    state,
    mail,
    isBusy,
    /** Loads what will be needed to send: by then the device may be offline. */
    prepare: async (): Promise<void> => (await loadSending()).prepareMaking(shop),
    /** Something was changed after the last that left the page. */
    changed,
    /** What is typed or attached would be lost with the page. */
    unsaved: computed(
      [typed, files, kept, form.refused, gone, changed, isBusy],
      (now, attached, isKept, refused, left, differs, busy) => {
        if (busy) return true;
        if (left !== null && !differs) return false;
        const hasFiles = Object.values(attached).some((all) => all.length > 0);
        const hasTexts = Object.values(now).some((text) => text.trim() !== '');
        return hasFiles || (hasTexts && !(isKept && !refused));
      },
    ),
    send: async (way: Delivery): Promise<void> => {
      if (isBusy.get()) return;
      state.set(await tryTo(way));
    },
    startAnew: () => {
      made = null;
      form.startAnew();
      state.set(told('nothing'));
    },
    clear: () => {
      made = null;
      form.clear();
      basket.clear();
      state.set(told('nothing'));
    },
  };
}
