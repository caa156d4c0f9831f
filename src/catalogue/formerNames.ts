/** What frames are called now that files and orders may still name otherwise. */

/** Former ids with the id of today. */
export type FormerNames = ReadonlyMap<string, string>;

interface Renamed {
  readonly id: string;
  readonly formerIds?: readonly string[];
}

/** The former ids of all frames. */
export function formerNames(frames: readonly Renamed[]): FormerNames {
  return new Map(
    frames.flatMap(({ id, formerIds = [] }) => formerIds.map((former) => [former, id] as const)),
  );
}
