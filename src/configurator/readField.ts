/** One entry read: its number, or the fault that says what is expected there. */
import type { Words } from '../catalogue/catalogue.ts';
import { say, writeDigits } from '../catalogue/words.ts';
import type { Fault } from '../quote/fault.ts';
import { bothSigns, decimalSlip } from './decimalSlip.ts';
import { type FieldFault, tellFault } from './fieldFault.ts';
import { type Entries, type Field, textOf } from './fields.ts';
import { readNumber } from './readNumber.ts';

/** Reads fields of one set of entries and collects their faults. */
export interface Reader {
  readonly entries: Entries;
  readonly faults: FieldFault[];
  /** The text of a field without outer spaces. */
  readonly text: (field: Field) => string;
  /** The number in a field; undefined where it is blank or cannot be read. */
  readonly number: (field: Field, kind: NumberKind) => number | undefined;
  readonly fault: (field: Field, key: string, more?: FaultDetails) => void;
  /** Adds what is wrong with a number that stands in a field. */
  readonly implausible: (field: Field, fault: Fault) => void;
}

/** What a fault is told with besides its sentence. */
interface FaultDetails {
  readonly slots?: Readonly<Record<string, string>>;
  readonly offers?: readonly string[];
}

/** `power` needs its sign: a lost sign is the costliest error of all. */
export type NumberKind = 'power' | 'plain';

/** A reader of entries, with the words that its faults are told in. */
export function readerOf(entries: Entries, words: Words): Reader {
  const faults: FieldFault[] = [];
  const text = (field: Field) => textOf(entries, field);
  const fault: Reader['fault'] = (field, key, { slots = {}, offers = [] } = {}) => {
    const missing = text(field) === '';
    faults.push({
      field,
      message: say(words, `worksheet.fault.${key}`, slots),
      expected: say(words, `worksheet.fault.${key}-expected`, slots),
      missing,
      ...(offers.length === 0 ? {} : { offers }),
    });
  };
  const number: Reader['number'] = (field, kind) => {
    const reading = readNumber(text(field));
    if (reading.kind === 'unread') fault(field, kind === 'power' ? 'not-a-power' : 'not-a-number');
    if (reading.kind !== 'number') return undefined;
    if (kind === 'power' && !reading.signed && reading.value !== 0) {
      const slip = decimalSlip(field, text(field));
      const offers = (slip.length > 0 ? slip : bothSigns(reading.value)).map((power) =>
        writeDigits(words, power),
      );
      const [minus = '', plus = ''] = offers;
      fault(field, slip.length > 0 ? 'no-point' : 'no-sign', { slots: { plus, minus }, offers });
      return undefined;
    }
    return reading.value;
  };
  const implausible: Reader['implausible'] = (field, found) => {
    faults.push({ field, ...tellFault(words, found), missing: false });
  };
  return { entries, faults, text, number, fault, implausible };
}
