/** What is wrong with what was typed on the order page, field by field. An empty field is no fault here. */
import { readNumber } from '../readNumber.ts';
import type { OrderParts } from './orderParts.ts';
import { ofPair, type Typed, textIn } from './typed.ts';

/** One fault; its sentence is `orderPage.fault.<code>`. */
export interface TypedFault {
  readonly field: string;
  readonly code: 'long' | 'lines' | 'email' | 'phone' | 'baseCurve';
  readonly slots: Readonly<Record<string, number>>;
}

/** What an order file has room for. */
export type Room = Pick<
  OrderParts,
  'MOST_LINE_LETTERS' | 'MOST_PROSE_LETTERS' | 'MOST_ADDRESS_LINES' | 'WORN_BASE_CURVES_D' | 'plainText'
>;

/** A pair as far as its fields depend on it. */
interface TypedPair {
  readonly id: number;
  /** Whether there is a prescription. */
  readonly prescribed: boolean;
}

/** All faults, in the order of the form. */
export function typedFaults(room: Room, typed: Typed, pairs: readonly TypedPair[]): readonly TypedFault[] {
  const line = (field: string) => tooLong(room, typed, field, room.MOST_LINE_LETTERS);
  const prose = (field: string) => tooLong(room, typed, field, room.MOST_PROSE_LETTERS);
  return [
    ...pairs.flatMap(({ id, prescribed }) => [
      ...line(ofPair(id, 'wearer')),
      ...(prescribed
        ? [...line(ofPair(id, 'prescriber')), ...line(ofPair(id, 'place')), ...prose(ofPair(id, 'written'))]
        : []),
      ...prose(ofPair(id, 'measuredNote')),
      ...wrong(typed, ofPair(id, 'baseCurve'), 'baseCurve', (text) => readBaseCurve(room, text) !== null),
    ]),
    ...line('name'),
    ...addressFaults(room, typed),
    ...line('email'),
    ...wrong(typed, 'email', 'email', (text) => /^[^\s@]+@[^\s@]+\.[^\s@]+$/.test(text)),
    ...line('phone'),
    ...wrong(typed, 'phone', 'phone', (text) => text.replace(/\D/g, '').length >= 5),
    ...prose('notes'),
  ];
}

/** The base curve that a text says, D; null where it is none, or says nothing. */
export function readBaseCurve(
  { WORN_BASE_CURVES_D: { least, most } }: Pick<Room, 'WORN_BASE_CURVES_D'>,
  text: string,
): number | null {
  const reading = readNumber(text);
  return reading.kind === 'number' && reading.value >= least && reading.value <= most ? reading.value : null;
}

function tooLong({ plainText }: Room, typed: Typed, field: string, most: number): TypedFault[] {
  const found = plainText(textIn(typed, field)).length;
  return found > most ? [{ field, code: 'long', slots: { most, found } }] : [];
}

function addressFaults(
  { MOST_LINE_LETTERS: letters, MOST_ADDRESS_LINES: most }: Room,
  typed: Typed,
): TypedFault[] {
  const lines = addressLines(typed);
  const found = Math.max(0, ...lines.map((line) => line.normalize('NFC').length));
  if (found > letters) return [{ field: 'address', code: 'long', slots: { most: letters, found } }];
  return lines.length > most
    ? [{ field: 'address', code: 'lines', slots: { most, found: lines.length } }]
    : [];
}

/** The lines of the address that say something. */
export const addressLines = (typed: Typed): readonly string[] =>
  textIn(typed, 'address')
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');

function wrong(
  typed: Typed,
  field: string,
  code: TypedFault['code'],
  isRight: (text: string) => boolean,
): TypedFault[] {
  const text = textIn(typed, field).trim();
  return text === '' || isRight(text) ? [] : [{ field, code, slots: {} }];
}
