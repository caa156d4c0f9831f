/** Inspections of a pair that were set aside, such as one that failed: their record stays when the pair is made again. */
import type { Draft } from './benchState.ts';
import { pairDraft } from './measuring.ts';

/** Fields of a pair that are no part of its inspection. */
const OTHERS = /^(?:earlier\.|markings$|supplierRemark$)/;

/** What was typed at each inspection of a pair that was set aside, the first one first. */
export function earlierDrafts(draft: Draft, at: number): readonly Draft[] {
  const all: Draft[] = [];
  for (let one = next(draft, at, 0); Object.keys(one).length > 0; one = next(draft, at, all.length))
    all.push(one);
  return all;
}

const next = (draft: Draft, at: number, count: number): Draft =>
  pairDraft(pairDraft(pairDraft(draft, at), 'earlier'), count);

/** The draft with the inspection of a pair set aside, and its fields empty for the next one. */
export function setAside(draft: Draft, at: number): Draft {
  const count = earlierDrafts(draft, at).length;
  const start = `${at}.`;
  const moved = Object.entries(draft).map(([key, text]): [string, string] => {
    const own = key.startsWith(start) && !OTHERS.test(key.slice(start.length));
    return own ? [`${start}earlier.${count}.${key.slice(start.length)}`, text] : [key, text];
  });
  return Object.fromEntries(moved);
}
