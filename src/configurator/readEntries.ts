/** All entries of a worksheet read at once: the request that they make, and what is wrong with any of them. */
import type { Words } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import { writeDigits } from '../catalogue/words.ts';
import { pairFaults } from '../quote/plausible.ts';
import type { PairRequest, QuoteRequest } from '../quote/request.ts';
import { type Choices, choicesOf } from './choices.ts';
import { decimalSlip } from './decimalSlip.ts';
import { isOwn, readOwnFrame, standIn } from './entry/ownFrame.ts';
import { type FieldFault, toFieldFault } from './fieldFault.ts';
import type { Entries } from './fields.ts';
import { orderTerms } from './orderTerms.ts';
import { type Reader, readerOf } from './readField.ts';
import { readFit } from './readFit.ts';
import { readPrescription } from './readPrescription.ts';
import type { ShopData } from './shopData.ts';
import { standTogether, withoutFaulty } from './withoutFaulty.ts';

export interface ReadEntries {
  readonly choices: Choices;
  /** What can be read without a fault; entries with one are left out of it. */
  readonly request: QuoteRequest;
  readonly faults: readonly FieldFault[];
  /** The shopper's own frame is not known yet: only prices can be told. */
  readonly waits: boolean;
}

/** What entries are read for. */
export interface ReadingFor {
  readonly frame: Frame;
  readonly data: ShopData;
  /** Civil date, `YYYY-MM-DD`. */
  readonly date: string;
}

/** Entries as a request for one pair on a civil date. */
export function readEntries(entries: Entries, given: ReadingFor): ReadEntries {
  const on = isOwn(given.frame) ? { ...given, frame: standIn(entries) } : given;
  const choices = choicesOf(entries, on.frame, on.data, on.date);
  const whole = readPair(entries, choices, on);
  const faulty = whole.faults.flatMap(({ field }) => (field === null ? [] : [field]));
  const { pair, waits } = faulty.length === 0 ? whole : readPair(withoutFaulty(entries, faulty), choices, on);
  return {
    choices,
    faults: whole.faults,
    waits,
    request: {
      date: on.date,
      language: on.data.shop.language,
      ...orderTerms(entries),
      pairs: [pair],
    },
  };
}

function readPair(
  entries: Entries,
  choices: Choices,
  { frame, data }: ReadingFor,
): { readonly pair: PairRequest; readonly faults: readonly FieldFault[]; readonly waits: boolean } {
  const { size, colourway, wearer, blank, ...lenses } = choices;
  const reader = readerOf(entries, data.words);
  // Kept as typed, but not asked of anybody who wants no power.
  const { prescription, prismRows } = readPrescription(
    lenses.use === 'none' ? { ...reader, faults: [], text: () => '', number: () => undefined } : reader,
  );
  const fit = readFit(reader);
  const own = isOwn(frame) ? readOwnFrame(reader) : null;
  const waits = own !== null && !own.known;
  const pair: PairRequest = {
    ...(own === null ? { frame: frame.id, size, colourway } : { frame: own.frame }),
    wearer,
    prescription: lenses.use === 'none' ? null : prescription,
    // Without measurements no lens is made in a frame that only stands in.
    fit: waits ? {} : fit,
    lenses: blank === 'auto' ? lenses : { ...lenses, blank },
  };
  const implausible = pairFaults(pair, 'pairs.0').map((fault) =>
    withOffers(data.words, toFieldFault(data.words, fault, prismRows), reader),
  );
  return {
    pair,
    faults: [...reader.faults, ...implausible.filter((fault) => !follows(fault, reader.faults))],
    waits,
  };
}

/** The fault with what may have been meant, where a point was left out. */
function withOffers(words: Words, fault: FieldFault, { text }: Reader): FieldFault {
  const slip = fault.field === null ? [] : decimalSlip(fault.field, text(fault.field));
  const offers = slip.map((power) => writeDigits(words, power));
  return offers.length === 0 ? fault : { ...fault, offers };
}

/** A fault that only follows from an entry that could not be read: telling both would send people astray. */
function follows(fault: FieldFault, unread: readonly FieldFault[]): boolean {
  const { field } = fault;
  if (field === null) return false;
  const aboutAnother = fault.missing || field.endsWith('.axis');
  return unread.some((other) => other.field === field || (aboutAnother && standTogether(field, other.field)));
}
