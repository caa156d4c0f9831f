/** A check of one value that names the paths of what is wrong in it. */
import type { ContentFault, FaultDetail, FieldPath } from '../fault.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';

/** A value with the file that it is from. */
interface Placed<T> {
  readonly origin: Origin;
  readonly value: T;
}

/** Tells of a fault at a path of the file. */
export type Add = (path: FieldPath, detail: FaultDetail) => void;

/** The check as one of entries: each fault at its place in the file. */
export function adding<T>(check: (value: T, add: Add) => void) {
  return ({ origin, value }: Placed<T>): ContentFault[] => {
    const faults: ContentFault[] = [];
    check(value, (path, detail) => faults.push(faultAt(origin, path, detail)));
    return faults;
  };
}
