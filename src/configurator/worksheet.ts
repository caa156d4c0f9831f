/**
 * The stores of one worksheet. `entries` holds only what the visitor typed or chose, as text; all else follows from
 * it and from what the engine answers.
 */
import { atom, computed, map } from 'nanostores';
import type { Frame } from '../catalogue/frame.ts';
import { type Slots, say } from '../catalogue/words.ts';
import type { Answer } from '../quote/answer.ts';
import type { FieldFault } from './fieldFault.ts';
import type { Entries, Field } from './fields.ts';
import type { Opening, Reports } from './opening.ts';
import { readEntries } from './readEntries.ts';
import type { ShopData } from './shopData.ts';
import { standingOf } from './standing.ts';

export interface WorksheetSource {
  readonly frame: Frame;
  readonly data: ShopData;
  readonly opening: Opening;
  /** Civil date in the shop's zone that prices and validity are judged for. */
  readonly date: string;
}

const NO_FAULTS: readonly FieldFault[] = [];

export type Worksheet = ReturnType<typeof createWorksheet>;

/** The stores of a worksheet, one set a page. */
export function createWorksheet({ frame, data, opening, date }: WorksheetSource) {
  const entries = map<Partial<Record<Field, string>>>({});
  // Fields that were left at least once: their faults are shown from then on, not while they are first typed.
  const left = map<Partial<Record<Field, boolean>>>({});
  const kept = atom(false);
  const answer = atom<Answer>(opening.answer);
  const reports = atom<Reports>(opening.reports);
  const priceFaults = atom<readonly FieldFault[]>([]);
  const engineFailed = atom(false);
  const read = computed(entries, (now) => readEntries(now, { frame, data, date }));
  const faults = computed([read, priceFaults], (now, more) => [...now.faults, ...more]);
  return {
    frame,
    data,
    date,
    /** A sentence or label of the worksheet; `key` without its leading `worksheet.`. */
    t: (key: string, slots: Slots = {}) => say(data.words, `worksheet.${key}`, slots),
    entries,
    /** Whether entries are kept on this device. */
    kept,
    /** The newest answer; that of the untouched worksheet until the engine has spoken. */
    answer,
    reports,
    /** The engine's faults of destination and exemption. */
    priceFaults,
    engineFailed,
    read,
    standing: computed([faults, answer], standingOf),
    shownFaults: computed([faults, left], (all, gone) => {
      const shown = all.filter(({ field }) => field === null || gone[field] === true);
      // The same empty list each time, so that no field is drawn again while all is well.
      return shown.length === 0 ? NO_FAULTS : shown;
    }),
    /** Each choice by itself: it changes only when it is chosen, or follows from another. */
    chosen: {
      size: computed(read, ({ choices }) => choices.size),
      colourway: computed(read, ({ choices }) => choices.colourway),
      wearer: computed(read, ({ choices }) => choices.wearer),
      use: computed(read, ({ choices }) => choices.use),
      design: computed(read, ({ choices }) => choices.design),
      material: computed(read, ({ choices }) => choices.material),
      tint: computed(read, ({ choices }) => choices.tint),
      coating: computed(read, ({ choices }) => choices.coating),
    },
    /** Puts in what was kept, or typed before the script was there. */
    fill: (first: Entries) => {
      left.set(Object.fromEntries(Object.keys(first).map((field) => [field, true])));
      entries.set({ ...first });
    },
    enter: (field: Field, text: string) => entries.setKey(field, text),
    leave: (field: Field) => left.setKey(field, true),
    /** All as it was before the first entry. */
    clear: () => {
      entries.set({});
      left.set({});
      kept.set(false);
    },
  };
}
