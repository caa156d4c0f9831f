/**
 * A PD as one number and a PD for each eye say the same: what stands in one way is carried to the other when the way is
 * changed, and what stood there and still agrees is left, so that changing back loses nothing.
 */
import type { Words } from '../../catalogue/catalogue.ts';
import { writeDigits } from '../../catalogue/words.ts';
import { type Entries, textOf } from '../fields.ts';
import { readNumber } from '../readNumber.ts';

/**
 * Entries with the PDs carried to the way that is chosen in them: their sum, or a half for each eye. Beside halves the
 * one number stays, which tells them from two eyes that were measured.
 */
export function carryPd(entries: Entries, words: Words): Entries {
  const write = (mm: number) => writeDigits(words, String(Math.round(mm * 1000) / 1000));
  const carried = (['pd', 'nearPd'] as const).map((name) => {
    const [both, right, left] = (['both', 'right', 'left'] as const).map((part) =>
      numberIn(entries, `${name}.${part}`),
    );
    const put = (of: Partial<Record<'both' | 'right' | 'left', number | null>>) =>
      Object.fromEntries(
        Object.entries(of).map(([part, mm]) => [`${name}.${part}`, mm === null ? '' : write(mm)]),
      );
    const sum = right === undefined || left === undefined ? undefined : right + left;
    if (textOf(entries, 'pd.mode') === 'both') {
      if (sum === undefined) return {};
      return both !== undefined && same(both, sum) ? put({ right: null, left: null }) : put({ both: sum });
    }
    if (both === undefined) return {};
    if (sum !== undefined) return same(both, sum) ? put({ both: null }) : halves(both, put);
    // One eye was measured: what is left of the sum is the other's.
    if (right !== undefined && right < both) return put({ left: both - right, both: null });
    if (left !== undefined && left < both) return put({ right: both - left, both: null });
    return halves(both, put);
  });
  return Object.assign({ ...entries }, ...carried);
}

const halves = <T>(both: number, put: (of: { right: number; left: number }) => T): T =>
  put({ right: both / 2, left: both / 2 });

const same = (one: number | undefined, other: number) => one !== undefined && Math.abs(one - other) < 0.001;

function numberIn(
  entries: Entries,
  field: `${'pd' | 'nearPd'}.${'both' | 'right' | 'left'}`,
): number | undefined {
  const reading = readNumber(textOf(entries, field));
  return reading.kind === 'number' && reading.value > 0 ? reading.value : undefined;
}
