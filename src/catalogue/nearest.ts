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

/** The one known name that was meant, or null where none is near or several are equally near. Case does not count. */
export function nearest(name: string, known: Iterable<string>): string | null {
  const wanted = name.toLowerCase().slice(0, 60);
  let found: string[] = [];
  let least = Math.max(1, Math.floor(wanted.length / 3));
  for (const candidate of known) {
    const plain = candidate.toLowerCase();
    if (Math.abs(plain.length - wanted.length) > least) continue;
    const apart = distance(wanted, plain);
    if (apart > least) continue;
    found = apart < least ? [candidate] : [...found, candidate];
    least = apart;
  }
  return found.length === 1 ? (found[0] ?? null) : found.length > 1 ? null : begunAlike(wanted, known);
}

/** `templeLength` was meant as `temple`. */
function begunAlike(wanted: string, known: Iterable<string>): string | null {
  const alike = [...known].filter((candidate) => {
    const plain = candidate.toLowerCase();
    return (
      Math.min(plain.length, wanted.length) >= 4 && (plain.startsWith(wanted) || wanted.startsWith(plain))
    );
  });
  return alike.length === 1 ? (alike[0] ?? null) : null;
}

/** `a`, `b` or `c`; long lists are cut after `most` names. */
export function listNames(names: readonly string[], most = 12): string {
  if (names.length === 0) return 'none';
  if (names.length > most) return `${names.slice(0, most).join(', ')} and ${names.length - most} more`;
  return names.length === 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}
