/** Which entries make up the package, which say who will wear it and how it is measured, and which the order's terms. */
import type { Choices } from '../choices.ts';
import { type Entries, FIELDS, type Field } from '../fields.ts';

/** What is chosen of the shop: nothing of it tells about a person. */
export const PACKAGE_FIELDS = [
  'size',
  'colourway',
  'use',
  'design',
  'material',
  'tint',
  'coating',
  'blank',
] as const satisfies readonly Field[];

/** What holds for the whole order. */
const TERMS_FIELDS = ['destination', 'exemption', 'codes'] as const satisfies readonly Field[];

const isOneOf = (fields: readonly Field[]) => (field: Field) => fields.includes(field);
/** The measures of a frame that the shopper already has tell nothing about a person either. */
const isPackage = (field: Field) => isOneOf(PACKAGE_FIELDS)(field) || field.startsWith('own.');

/** Whether an entry holds for the whole order. */
export const isTerms: (field: Field) => boolean = isOneOf(TERMS_FIELDS);

/**
 * Prescription, measurements and wearer: health data. Whatever is neither package nor terms counts as such, so that
 * a field that is new to the worksheet is never told by mistake.
 */
export const isPrivate = (field: Field): boolean => !isPackage(field) && !isTerms(field);

function pick(entries: Entries, passes: (field: Field) => boolean): Entries {
  const filled = FIELDS.filter((field) => passes(field) && (entries[field] ?? '') !== '');
  return Object.fromEntries(filled.map((field) => [field, entries[field]]));
}

/** Entries of prescription, measurements and wearer alone. */
export const privatePart = (entries: Entries): Entries => pick(entries, isPrivate);

/** Entries of the package alone. */
export const packagePart = (entries: Entries): Entries => pick(entries, isPackage);

/** Entries of the order's terms alone. */
export const termsPart = (entries: Entries): Entries => pick(entries, isTerms);

const PRESCRIBED = /^(?:right|left)\.|^(?:vertexTested|issued)$/;

/** What a field is about, for saying what was filled in without reading out each figure. */
export function groupOf(
  field: Field,
): (typeof PACKAGE_FIELDS)[number] | 'own' | 'prescription' | 'measures' | 'wearer' | 'terms' {
  const chosen = PACKAGE_FIELDS.find((name) => name === field);
  if (chosen !== undefined) return chosen;
  if (field.startsWith('own.')) return 'own';
  if (isTerms(field)) return 'terms';
  if (field === 'wearer') return 'wearer';
  return PRESCRIBED.test(field) ? 'prescription' : 'measures';
}

/** One pair by itself: a frame of the shop, and the entries that hold for this pair. */
export interface HeldPair {
  readonly frame: string;
  /** Every choice is among them, also one that the visitor left as it was: the shop's order may change. */
  readonly entries: Entries;
}

/** The pair of a worksheet as it stands, without the terms of the order. */
export function holdPair(frame: string, entries: Entries, choices: Choices): HeldPair {
  const { wearer, tint, coating, blank, ...named } = choices;
  const chosen = {
    ...named,
    tint: tint ?? '',
    coating: coating ?? '',
    // Whichever suits: what holds where nothing is said.
    blank: blank === 'auto' ? '' : blank,
  };
  return {
    frame,
    entries: { ...privatePart(entries), wearer, ...packagePart({ ...entries, ...chosen }) },
  };
}
