/** Finds the name that somebody meant. */

/** Number of letters to insert, delete, replace or swap with their neighbour to get from `a` to `b`. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let last: number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** The known name closest to `name`, or null where none is near enough to be meant. Case does not count. */
export function nearest(name: string, known: Iterable<string>): string | null {
  const wanted = name.toLowerCase().slice(0, 60);
  let best: string | null = null;
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 0.5;
  for (const candidate of known) {
    const plain = candidate.toLowerCase();
    if (Math.abs(plain.length - wanted.length) > least) continue;
    const found = distance(wanted, plain);
    if (found < least) {
      best = candidate;
      least = found;
    }
  }
  return best;
}

/** `a`, `b` or `c`; long lists are cut after `most` names. */
export function listNames(names: readonly string[], most = 12): string {
  if (names.length === 0) return 'none';
  if (names.length > most) return `${names.slice(0, most).join(', ')} and ${names.length - most} more`;
  return names.length === 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}
