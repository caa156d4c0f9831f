/**
 * The stores of one worksheet. `entries` holds only what the visitor typed or chose, as text; all else follows from
 * it and from what the engine answers.
 */
import { atom, computed, map } from 'nanostores';
import type { Frame } from '../catalogue/frame.ts';
import { type Slots, say, writeDigits } from '../catalogue/words.ts';
import type { Answer, PairAnswer } from '../quote/answer.ts';
import type { DrawingsView } from '../quote/view/drawings.ts';
import { isChanged } from './changedFields.ts';
import type { Compared } from './drawn.ts';
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

/** What could be done about a pair: being looked for, found, not to be had, or not asked for. */
export interface Advice {
  readonly kind: 'none' | 'waiting' | 'given' | 'failed';
  readonly pair: PairAnswer | null;
  /** What the frames that it leads to are called, by id, and by id and size. */
  readonly models: Readonly<Record<string, string>>;
}

/** Drawings of the present package, and the option that they are laid over. */
export interface Drawn {
  readonly view: DrawingsView;
  readonly compared: Compared | null;
}

/** The last advice that was taken. */
export interface Applied {
  readonly before: Entries;
  readonly names: string;
  /** Whether it emptied heights, which belong to the size before. */
  readonly heights: boolean;
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
  const advice = atom<Advice>({ kind: 'none', pair: null, models: {} });
  const drawings = atom<Drawn | null>(null);
  const applied = atom<Applied | null>(null);
  // Whether somebody can see the drawings; what is pointed at; what was chosen to compare with.
  const drawing = atom(false);
  const pointed = atom<Compared | null>(null);
  const beside = atom<Compared | null>(null);
  const read = computed(entries, (now) => readEntries(now, { frame, data, date }));
  const faults = computed([read, priceFaults], (now, more) => [...now.faults, ...more]);
  return {
    frame,
    data,
    date,
    /** A sentence or label of the worksheet; `key` without its leading `worksheet.`. */
    t: (key: string, slots: Slots = {}) => say(data.words, `worksheet.${key}`, slots),
    /** A text of figures with the decimal sign of the page. */
    digits: (text: string) => writeDigits(data.words, text),
    entries,
    /** Whether entries are kept on this device. */
    kept,
    /** The newest answer; that of the untouched worksheet until the engine has spoken. */
    answer,
    reports,
    /** Each kind's reports by themselves, so that one list is drawn again and not all. */
    reported: {
      design: computed(reports, ({ design }) => design),
      material: computed(reports, ({ material }) => material),
      tint: computed(reports, ({ tint }) => tint),
      coating: computed(reports, ({ coating }) => coating),
      blank: computed(reports, ({ blank }) => blank),
    },
    /** The engine's faults of destination and exemption. */
    priceFaults,
    engineFailed,
    advice,
    drawings,
    drawing,
    pointed,
    beside,
    /** What the engine is to draw the present package beside; null: by itself; undefined: nothing is looked at. */
    drawn: computed([drawing, pointed, beside, read], (on, first, second, { choices }) => {
      const other = first ?? second;
      const same = other !== null && choices[other.kind] === other.id;
      if (!on) return undefined;
      return same ? null : other;
    }),
    applied,
    read,
    standing: computed([faults, answer, left], (all, now, gone) =>
      standingOf(all, now, (field) => gone[field] !== true),
    ),
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
      blank: computed(read, ({ choices }) => choices.blank),
    },
    /** Puts in what was kept, or typed before the script was there. */
    fill: (first: Entries) => {
      left.set(Object.fromEntries(Object.keys(first).map((field) => [field, true])));
      entries.set({ ...first });
    },
    enter: (field: Field, text: string) => {
      // What was chosen since cannot be told from what advice changed.
      if (isChanged(field)) applied.set(null);
      entries.setKey(field, text);
      if (field === 'pd.mode')
        import('./entry/pdMode.ts').then(({ carryPd }) => entries.set(carryPd(entries.get(), data.words)));
    },
    leave: (field: Field) => left.setKey(field, true),
    /** All as it was before the first entry. */
    clear: () => {
      entries.set({});
      left.set({});
      applied.set(null);
      kept.set(false);
    },
  };
}
