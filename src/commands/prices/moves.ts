/** Two lists of prices against each other: what moves, what is new, what is gone. */
import type { PriceRow } from './listedPrices.ts';

export interface Move extends Omit<PriceRow, 'minor'> {
  /** Null: new. */
  readonly oldMinor: number | null;
  /** Null: gone. */
  readonly newMinor: number | null;
  readonly differenceMinor: number | null;
  /** Of the old price, to a tenth; null where there is none, or it was 0. */
  readonly percent: number | null;
}

const keyOf = ({ kind, source, part }: PriceRow) =>
  // A cheapest pair may move to another frame and is still the cheapest.
  JSON.stringify([kind, kind === 'package' ? '' : source, part]);

function move(old: PriceRow | null, now: PriceRow | null): Move | null {
  const row = now ?? old;
  if (row === null) return null;
  const { minor: _, ...rest } = row;
  const both = old !== null && now !== null;
  const differenceMinor = both ? now.minor - old.minor : null;
  return {
    ...rest,
    oldMinor: old?.minor ?? null,
    newMinor: now?.minor ?? null,
    differenceMinor,
    percent:
      both && old.minor !== 0
        ? Math.round((1000 * (now.minor - old.minor)) / Math.abs(old.minor)) / 10
        : null,
  };
}

/** Largest differences first, then what is new, then what is gone. */
function bySize(a: Move, b: Move): number {
  const rank = ({ oldMinor, newMinor }: Move) => (newMinor === null ? 2 : oldMinor === null ? 1 : 0);
  return (
    rank(a) - rank(b) ||
    Math.abs(b.differenceMinor ?? 0) - Math.abs(a.differenceMinor ?? 0) ||
    Math.abs(b.percent ?? 0) - Math.abs(a.percent ?? 0)
  );
}

/** A difference of 0 that comes or goes with its frame moves no price. */
const isDifference = ({ kind }: PriceRow) => kind === 'colourway' || kind === 'size';

/** Every price that moves from `old` to `now`. */
export function movesBetween(old: readonly PriceRow[], now: readonly PriceRow[]): Move[] {
  const before = new Map(old.map((row) => [keyOf(row), row]));
  const after = new Map(now.map((row) => [keyOf(row), row]));
  const moves = [...new Set([...after.keys(), ...before.keys()])].flatMap((key) => {
    const [was, is] = [before.get(key) ?? null, after.get(key) ?? null];
    if (was?.minor === is?.minor) return [];
    const only = was === null ? is : is === null ? was : null;
    if (only !== null && isDifference(only) && only.minor === 0) return [];
    const found = move(was, is);
    return found === null ? [] : [found];
  });
  return moves.toSorted(bySize);
}
