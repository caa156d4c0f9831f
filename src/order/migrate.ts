/**
 * Orders of older versions, brought up one version at a time. A step takes an order as its version wrote it and gives
 * what the next version would have written; the schema looks at the result only. Version 1 is the first, so there is
 * no step yet: the change that makes version 2 adds the step from 1.
 */

export type JsonObject = Readonly<Record<string, unknown>>;

/** Steps by the version that they start from. */
export type Migrations = ReadonlyMap<number, (order: JsonObject) => JsonObject>;

export const MIGRATIONS: Migrations = new Map();

/** The order at version `to`, or null where a step is missing or fails on it. */
export function migrate(order: JsonObject, from: number, to: number, steps: Migrations): JsonObject | null {
  let current = order;
  for (let version = from; version < to; version += 1) {
    const step = steps.get(version);
    if (step === undefined) return null;
    try {
      current = step(current);
    } catch {
      // A step meets what it does not expect: the file is not what its version says.
      return null;
    }
  }
  return current;
}
