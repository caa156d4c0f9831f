/** Which entries stand or fall together: a fault in one of them leaves the others without meaning. */
import { type Entries, EYES, type Field, PAIRED } from './fields.ts';

const GROUPS: readonly (readonly Field[])[] = [
  ...EYES.flatMap((eye): (readonly Field[])[] => [
    [`${eye}.sphere`, `${eye}.cylinder`, `${eye}.axis`],
    [`${eye}.prism1.amount`, `${eye}.prism1.base`, `${eye}.prism2.amount`, `${eye}.prism2.base`],
  ]),
  ...PAIRED.map((name): readonly Field[] => [`${name}.right`, `${name}.left`]),
];

/** Whether two entries mean nothing without each other. */
export const standTogether = (one: Field, other: Field | null): boolean =>
  other !== null && GROUPS.some((group) => group.includes(one) && group.includes(other));

/** The entries without the faulty ones and those that stand or fall with them. */
export function withoutFaulty(entries: Entries, faulty: readonly Field[]): Entries {
  const left = { ...entries };
  for (const field of faulty) {
    delete left[field];
    for (const group of GROUPS) if (group.includes(field)) for (const other of group) delete left[other];
  }
  return left;
}
