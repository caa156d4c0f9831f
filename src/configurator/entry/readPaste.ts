/**
 * A pasted prescription becomes entries. An eye that is not understood to its end is left alone, since half of a
 * power is worse than none; the other eye is read all the same.
 */
import type { NotationFault, Wanted } from '../../optics/notation/fault.ts';
import type { WrittenEye, WrittenPrescription } from '../../optics/notation/written.ts';
import type { Eye } from '../../optics/types.ts';
import { type Entries, EYES } from '../fields.ts';
import { acuities } from './acuity.ts';
import { blanked, readAsides } from './asides.ts';
import { contactLensFigures, type Span } from './contactLens.ts';
import { eyeEntries } from './eyeEntries.ts';
import { isUnknownWord, readAround } from './readAround.ts';

/** A stretch of the text that was not taken, and why. */
export type PasteMark = Span & {
  /**
   * `mixed`: letters grown together with a number. `unknown`: left out, what stands around it is read. `unclear`: it
   * may change what the figures beside it mean.
   */
  readonly kind: 'fault' | 'mixed' | 'unknown' | 'unclear' | 'unused' | 'contact-lens';
  /** What was expected there; null where nothing is wrong. */
  readonly expected: Wanted | null;
};

export interface Paste {
  readonly kind: 'read' | 'contact-lens';
  /** Whole eyes as read; an absent one is not in the text, or not understood. */
  readonly eyes: WrittenPrescription;
  /** Eyes that the text names and that were not understood to their end. */
  readonly unread: readonly Eye[];
  /** The fields that the text fills; those of an eye that it leaves empty are empty texts. */
  readonly entries: Entries;
  /** In the order of the text, without overlap. */
  readonly marks: readonly PasteMark[];
}

const NOTHING: WrittenPrescription = { right: null, left: null };

/** What a pasted text says, and what of it was not understood. */
export function readPaste(text: string): Paste {
  const figures = contactLensFigures(text);
  if (figures.length > 0) {
    const marks = figures.map((span) => ({ ...span, kind: 'contact-lens' as const, expected: null }));
    return { kind: 'contact-lens', eyes: NOTHING, unread: [], entries: {}, marks: apart(marks) };
  }
  const seen = acuities(text);
  const { entries, unused, rest } = readAsides(seen.reduce(blanked, text));
  const { eyes, faults, unknown, unread } = readEyes(rest);
  const marks: PasteMark[] = [
    ...faults.map((fault) => faultMark(rest, fault)),
    ...[...seen, ...unknown].map((span) => ({ ...span, kind: 'unknown' as const, expected: null })),
    ...unused.map((span) => ({ ...span, kind: 'unused' as const, expected: null })),
  ];
  const ofEyes = EYES.map((eye) => (eyes[eye] === null ? {} : eyeEntries(eye, eyes[eye])));
  return { kind: 'read', eyes, unread, entries: Object.assign({}, ...ofEyes, entries), marks: apart(marks) };
}

/** The mark of a fault; of a letter within a number, such as `19O`, it holds the number too. */
function faultMark(text: string, fault: NotationFault): PasteMark {
  const { start, end, expected, found } = fault;
  const number = /[\d.,]+$/.exec(text.slice(0, start))?.[0] ?? '';
  const mixed = number !== '' && /^\p{L}/u.test(found);
  if (mixed) return { start: start - number.length, end, kind: 'mixed', expected: null };
  return isUnknownWord(fault)
    ? { start, end, kind: 'unclear', expected: null }
    : { start, end, kind: 'fault', expected };
}

interface ReadEyes {
  readonly eyes: WrittenPrescription;
  readonly faults: readonly NotationFault[];
  /** What was left out, the rest being read. */
  readonly unknown: readonly Span[];
  readonly unread: readonly Eye[];
}

/** Both eyes at once; where that fails each by itself, with what is said for both. */
function readEyes(text: string): ReadEyes {
  const { read: whole, unknown: beside } = readAround(text);
  if (whole.ok) return { eyes: whole.value, faults: [], unknown: beside, unread: [] };
  const parts = partsOf(text);
  const faults: NotationFault[] = [];
  const unknown: Span[] = [];
  const eyes: { right: WrittenEye | null; left: WrittenEye | null } = { ...NOTHING };
  for (const eye of EYES) {
    const own = parts.filter(({ of }) => of === eye || of === 'both');
    if (!own.some(({ of }) => of === eye)) continue;
    const others = parts.filter((part) => !own.includes(part));
    const { read: alone, unknown: left } = readAround(others.reduce(blanked, text));
    unknown.push(...left);
    if (alone.ok) eyes[eye] = alone.value[eye];
    else faults.push(alone.fault);
  }
  // What fails only as a whole, such as an eye that is named twice, leaves none of it to be trusted.
  const read = faults.length === 0 ? { eyes: NOTHING, faults: [whole.fault] } : { eyes, faults };
  const named = EYES.filter((eye) => parts.some(({ of }) => of === eye || of === 'both'));
  return { ...read, unknown, unread: named.filter((eye) => read.eyes[eye] === null) };
}

interface Part extends Span {
  readonly of: Eye | 'both' | 'none';
}

const PART =
  /(?<![\p{L}.])(?:(?<right>o\.?d\.?|r\.?e\.?|r|right|(?:(?:œil|oeil)\s+)?droit)|(?<left>o\.?s\.?|o\.?g\.?|(?:(?:œil|oeil)\s+)?gauche|l\.?e\.?|l|left)|(?<both>add(?:ition)?[\s:=]*(?:(?:ou|odg|be|both)(?!\p{L})|\+?[\d.,]+\s*(?:d|ds|dpt)?\s*(?:ou|odg|be|both)(?=\s*(?:$|[\r\n;,/|)])))|o\.?u\.?|o\.?d\.?g\.?|be|both)|(?<add>(?<=^[^\S\n]*)add(?:ition)?))(?![\p{L}\d])/gimu;

/** Stretches of the text that are about one eye or both, from each name to the next. */
function partsOf(text: string): readonly Part[] {
  const found = [...text.matchAll(PART)].map(({ index, groups }) => ({
    start: index,
    of: groups?.['right'] ? ('right' as const) : groups?.['left'] ? ('left' as const) : ('both' as const),
    isAdd: groups?.['add'] !== undefined,
  }));
  // An add on a line of its own is for both eyes only below both.
  const names = found.filter(({ isAdd, start }) => {
    const above = found.filter((one) => one.start < start && !one.isAdd).map(({ of }) => of);
    return !isAdd || (above.includes('right') && above.includes('left')) || above.includes('both');
  });
  const first: Part = { of: 'none', start: 0, end: names[0]?.start ?? text.length };
  return [
    first,
    ...names.map(({ of, start }, at): Part => ({ of, start, end: names[at + 1]?.start ?? text.length })),
  ];
}

/** Marks in order; of two that overlap the first. */
function apart(marks: readonly PasteMark[]): readonly PasteMark[] {
  const sorted = [...marks].sort((one, other) => one.start - other.start || one.end - other.end);
  return sorted.filter((mark, at) => {
    const before = sorted[at - 1];
    return before === undefined || (mark.start >= before.end && mark.start !== before.start);
  });
}
