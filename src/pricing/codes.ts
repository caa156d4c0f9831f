/** Codes as shoppers type them. */
import type { Wording } from './charge.ts';
import type { Considered } from './promotions.ts';

const plain = (code: string): string => code.normalize('NFKC').trim().toLowerCase();

/** Whether two codes are the same: capitals and outer spaces do not matter. */
export function sameCode(one: string, other: string): boolean {
  return plain(one) === plain(other);
}

export interface Typed {
  /** As first typed, without outer spaces. */
  readonly code: string;
  readonly used: boolean;
  readonly why: Wording;
}

/** What became of each code, in the order typed; a repeated one counts once, and an empty one not at all. */
export function codesTyped(codes: readonly string[], considered: readonly Considered[]): Typed[] {
  const once = codes.filter(
    (code, index) => plain(code) !== '' && codes.findIndex((other) => sameCode(code, other)) === index,
  );
  return once.map((typed) => {
    const code = typed.trim();
    const meant = considered.filter(
      ({ promotion }) => promotion.code !== null && sameCode(promotion.code, typed),
    );
    const told = meant.find(({ used }) => used) ?? meant[0];
    if (!told) return { code, used: false, why: { key: 'price.why.unknown-code', slots: { code } } };
    return { code, used: told.used, why: told.why };
  });
}
