/** What `npm run build` and `npm run dev` take besides Astro's own options; astro.config.mjs reads it from the environment. */
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { isCivilDate } from '../catalogue/civilDate.ts';

const BUILD_OPTIONS = {
  /** Civil date of the shop that the pages are made for. */
  date: 'BEVELBOOK_DATE',
  /** Path below which the site is served, in place of that of the shop's address. */
  base: 'BEVELBOOK_BASE',
  /** Another content folder. */
  shop: 'BEVELBOOK_SHOP',
  /** Where the site is written. */
  out: 'BEVELBOOK_OUT',
} as const;

type Option = keyof typeof BUILD_OPTIONS;

/** What is wrong with a value; null: nothing. */
function fault(option: Option, value: string): string | null {
  if (option === 'date' && !isCivilDate(value)) return 'a day of the calendar as YYYY-MM-DD';
  if (option === 'base' && !/^\/(?:[\w.~-]+\/)*$/.test(value))
    return 'a path such as /shop/, with a slash at both ends';
  if (option === 'shop' && !existsSync(value)) return 'a folder of content';
  return null;
}

/** Takes our options out of the arguments: the rest for Astro, and what goes into the environment; or what is wrong. */
export function readBuildOptions(
  args: readonly string[],
): { readonly rest: string[]; readonly env: Record<string, string> } | { readonly fault: string } {
  const text = { type: 'string' } as const;
  const options = { date: text, base: text, shop: text, out: text };
  const { tokens } = parseArgs({
    args: [...args],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const env: Record<string, string> = {};
  const taken = new Set<number>();
  for (const token of tokens) {
    if (token.kind !== 'option' || !(token.name in BUILD_OPTIONS)) continue;
    const option = token.name as Option;
    const value = token.value ?? '';
    const expected = value === '' ? 'a value' : fault(option, value);
    if (expected !== null) return { fault: `--${option}: expected ${expected}, found "${value}".` };
    env[BUILD_OPTIONS[option]] = option === 'shop' || option === 'out' ? resolve(value) : value;
    taken.add(token.index);
    if (!token.inlineValue) taken.add(token.index + 1);
  }
  return { rest: args.filter((_, at) => !taken.has(at)), env };
}
