/**
 * A package as the fragment of an address, which browsers do not send to any server: `p1;z=51-19;y=kelp;...`, a
 * version, then fields by short names, their values escaped. Without the shopper's word no prescription is in it.
 */
import { type Entries, FIELDS, type Field } from '../fields.ts';
import { LONGEST_ENTRY } from '../keeping.ts';
import { fieldOfKey, keyOf } from './linkKeys.ts';
import { type HeldPair, isPrivate, isTerms, packagePart, privatePart } from './parts.ts';

const VERSION = 1;

/** Longer than all fields filled to their limits ever are in practice; more is no link of ours. */
const LONGEST_LINK = 6000;

/** Parts that are told one by one; the rest of a broken link is not worth reading out. */
const MOST_TOLD = 8;

/** Signs that no one types into a field, and that would be shown as nothing. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}]/gu;

/** The fragment of a pair, without `#`. */
export function writeLink({ entries }: Pick<HeldPair, 'entries'>, withPrescription: boolean): string {
  const told: Entries = {
    ...packagePart(entries),
    ...(withPrescription ? privatePart(entries) : {}),
  };
  const parts = FIELDS.flatMap((field) => {
    const value = escaped(told[field] ?? '');
    return value === '' ? [] : [`${keyOf(field)}=${value}`];
  });
  return [`p${VERSION}`, ...parts].join(';');
}

/** Also what programs that find links in a text leave out: brackets, and a point at the end. */
function escaped(text: string): string {
  const plain = text.slice(0, LONGEST_ENTRY).replace(UNSEEN, '').trim();
  return encodeURIComponent(plain)
    .replace(/[!'()*~]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`)
    .replace(/\.$/, '%2e');
}

/** A part of a link that was left out, as it stands there, shortened. */
export interface LeftOut {
  readonly part: string;
  readonly why: 'unknown' | 'unreadable' | 'too-long' | 'twice';
}

export type LinkReading =
  | {
      readonly ok: true;
      readonly entries: Entries;
      /** Anything of the prescription, the measurements or the wearer is in it. */
      readonly personal: boolean;
      readonly leftOut: readonly LeftOut[];
      /** More was left out than is listed. */
      readonly more: number;
    }
  | { readonly ok: false; readonly why: 'version' | 'too-long' };

/** Whether a fragment, with or without `#`, means to be a package. */
export const isLink = (fragment: string): boolean => /^#?p\d+(?:;|$)/.test(fragment);

/** What a fragment says; null where it is none of ours. Never throws, whatever stands in it. */
export function readLink(fragment: string): LinkReading | null {
  if (!isLink(fragment)) return null;
  if (fragment.length > LONGEST_LINK) return { ok: false, why: 'too-long' };
  const [version = '', ...parts] = fragment.replace(/^#/, '').split(';');
  if (version !== `p${VERSION}`) return { ok: false, why: 'version' };
  const entries: Partial<Record<Field, string>> = {};
  const leftOut: LeftOut[] = [];
  for (const part of parts.filter((one) => one !== '')) {
    const read = readPart(part);
    if ('why' in read) leftOut.push(read);
    else if (Object.hasOwn(entries, read.field)) leftOut.push({ part: shortened(part), why: 'twice' });
    else entries[read.field] = read.value;
  }
  return {
    ok: true,
    entries,
    personal: FIELDS.some((field) => isPrivate(field) && Object.hasOwn(entries, field)),
    leftOut: leftOut.slice(0, MOST_TOLD),
    more: Math.max(0, leftOut.length - MOST_TOLD),
  };
}

function readPart(part: string): LeftOut | { readonly field: Field; readonly value: string } {
  const at = part.indexOf('=');
  const field = at < 0 ? undefined : fieldOfKey(part.slice(0, at));
  // The terms of an order are never in a link: a code is not handed on by accident.
  if (field === undefined || isTerms(field)) return { part: shortened(part), why: 'unknown' };
  const value = unescaped(part.slice(at + 1));
  if (value === null || value === '') return { part: shortened(part), why: 'unreadable' };
  return value.length > LONGEST_ENTRY ? { part: shortened(part), why: 'too-long' } : { field, value };
}

function unescaped(text: string): string | null {
  try {
    const value = decodeURIComponent(text);
    return value.replace(UNSEEN, '') === value ? value.trim() : null;
  } catch {
    return null;
  }
}

const shortened = (part: string): string => {
  const plain = part.replace(UNSEEN, '');
  return plain.length > 40 ? `${plain.slice(0, 40)}…` : plain;
};
