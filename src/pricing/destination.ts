/** Which entries of the shop speak for a destination. */

/** An entry that names destinations: `US-ME`, `US`, or `*` for anywhere else. */
interface Named {
  readonly destinations: readonly string[];
}

const PLACE = /^[A-Z]{2}(-[A-Z0-9]{1,3})?$/;

/** `asked` as ISO 3166 writes it (`us-me ` is `US-ME`); null when it cannot be a country or subdivision code. */
export function placeOf(asked: string): string | null {
  const place = asked.trim().toUpperCase();
  return PLACE.test(place) ? place : null;
}

/** How closely `name` fits the place: 3 the very place, 2 its country, 1 anywhere (`*`), 0 not at all. */
function closeness(name: string, place: string): number {
  const written = name.trim().toUpperCase();
  if (written === place) return 3;
  if (written === place.slice(0, 2)) return 2;
  return written === '*' ? 1 : 0;
}

/**
 * The entries that name the place most closely, in declared order: those for the subdivision where there are any,
 * else those for the country, else those for anywhere. Empty when none fits.
 */
export function entriesFor<Entry extends Named>(entries: readonly Entry[], place: string): Entry[] {
  const closest = entries.map(({ destinations }) =>
    Math.max(0, ...destinations.map((name) => closeness(name, place))),
  );
  const best = Math.max(0, ...closest);
  return best === 0 ? [] : entries.filter((_, index) => closest[index] === best);
}

/** Every destination that the entries name, each once, for a message; a dash when there is none. */
export function placesNamed(entries: readonly Named[]): string {
  return [...new Set(entries.flatMap(({ destinations }) => destinations))].join(', ') || '-';
}
