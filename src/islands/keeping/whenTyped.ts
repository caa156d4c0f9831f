/** Loads what minds the entries with the first of them: most visitors make none. */
import type { Worksheet } from '../../configurator/worksheet.ts';

/** Returns what stops it. */
export function whenTyped({ entries }: Worksheet, begin: () => Promise<void>): () => void {
  let begun = false;
  return entries.subscribe((now) => {
    if (begun || Object.keys(now).length === 0) return;
    begun = true;
    begin().catch((error) => {
      console.error(error);
      // The next key tries again.
      begun = false;
    });
  });
}
