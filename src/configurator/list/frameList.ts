/** The stores of the list: what the visitor typed and chose, what the engine answered, and which frames follow. */
import { atom, computed, map } from 'nanostores';
import type { Words } from '../../catalogue/catalogue.ts';
import type { Shop } from '../../catalogue/shop.ts';
import { type Slots, say, writeDigits } from '../../catalogue/words.ts';
import type { Entries, Field } from '../fields.ts';
import type { ListTold } from './answerList.ts';
import type { FrameFacts } from './facts.ts';
import { type Filters, NO_FILTERS, passes } from './filters.ts';
import { type Answers, type Order, sorted } from './order.ts';
import { readList } from './readList.ts';

export interface ListSource {
  readonly shop: Shop;
  /** Words of the worksheet's entries and of the list. */
  readonly words: Words;
  readonly facts: readonly FrameFacts[];
  /** Civil date in the shop's zone. */
  readonly date: string;
}

export type FrameListStores = ReturnType<typeof createFrameList>;

/** Where the answering stands: nothing asked, not all answered yet, all answered, or no engine. */
export type Progress = 'idle' | 'judging' | 'done' | 'failed';

/** The stores of a list of frames. */
export function createFrameList({ shop, words, facts, date }: ListSource) {
  const entries = map<Partial<Record<Field, string>>>({});
  const left = map<Partial<Record<Field, boolean>>>({});
  const filters = atom<Filters>(NO_FILTERS);
  const order = atom<Order>('shop');
  const answers = atom<Answers>(new Map());
  const progress = atom<Progress>('idle');
  const read = computed(entries, (now) => readList(now, shop, words, date));
  // By itself: it seldom changes, and the list is not sorted again at each key.
  const wearer = computed(read, (now) => now.wearer);
  return {
    ...{ shop, facts, entries, filters, order, answers, progress, read },
    /** A text of the worksheet's entries; `key` without its leading `worksheet.`. */
    t: (key: string, slots: Slots = {}) => say(words, `worksheet.${key}`, slots),
    digits: (text: string) => writeDigits(words, text),
    /** A text of the list; `key` without its leading `list.`. */
    told: (key: string, slots: Slots = {}) => say(words, `list.${key}`, slots),
    /** What a rule is called. */
    title: (rule: string) => say(words, `rule.${rule}.title`),
    /** Whether entries are kept on this device. */
    kept: atom(false),
    /** Whether entries go along to the frame that is opened. */
    taken: atom(false),
    shownFaults: computed([read, left], ({ faults }, gone) =>
      faults.filter(({ field }) => field === null || gone[field] === true),
    ),
    /** The frames that pass, in their order. */
    shown: computed([answers, filters, order, wearer], (known, only, by, whose) =>
      sorted(facts, known, by, shop.language, whose).filter((one) => passes(one, known.get(one.id), only)),
    ),
    fill: (first: Entries) => {
      left.set(Object.fromEntries(Object.keys(first).map((field) => [field, true])));
      entries.set({ ...first });
    },
    enter: (field: Field, text: string) => entries.setKey(field, text),
    leave: (field: Field) => left.setKey(field, true),
    clear: () => {
      entries.set({});
      left.set({});
    },
    /** Puts in what the engine told; frames that have nothing to answer are left without. */
    hear: ({ listed, done }: ListTold) => {
      const known = new Map(answers.get());
      for (const { frame, answer } of listed) {
        if (answer === null) known.delete(frame);
        else known.set(frame, answer);
      }
      answers.set(known);
      if (done) progress.set('done');
    },
  };
}
