/** Reads costs.yaml, which lies beside the content folder so that nothing that builds the site ever sees it. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { ContentFault, FieldPath } from '../../catalogue/fault.ts';
import { listNames, nearest } from '../../catalogue/nearest.ts';
import { faultAt, readEntry, readOrigin } from '../../catalogue/reading/entry.ts';
import type { Origin } from '../../catalogue/reading/origin.ts';
import { decodeSource } from '../../catalogue/reading/sourceText.ts';
import { type Costs, costsSchema } from '../../catalogue/schema/costs.ts';
import { moneyIn } from '../../catalogue/schema/money.ts';

export type CostReading =
  | { readonly ok: true; readonly costs: Costs | null; readonly warning: string | null }
  | { readonly ok: false; readonly faults: readonly ContentFault[] };

/** Ids that the shop does not have: a slip there would leave a cost out without a word. */
function unknownIds(origin: Origin, costs: Costs, catalogue: Catalogue): ContentFault[] {
  const faults: ContentFault[] = [];
  const look = (path: FieldPath, table: Readonly<Record<string, unknown>>, known: readonly string[]) => {
    for (const id of Object.keys(table)) {
      if (known.includes(id)) continue;
      const meant = nearest(id, known);
      const detail = {
        code: 'unknown-reference',
        expected: `an id of the shop: ${listNames(known)}`,
        received: `"${id}"`,
        hint: meant === null ? 'Use one of these, or remove the line.' : `Did you mean "${meant}"?`,
      } as const;
      faults.push(faultAt(origin, [...path, id], detail, 'key'));
    }
  };
  const ids = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);
  for (const kind of ['frames', 'designs', 'materials', 'tints', 'coatings'] as const)
    look([kind], costs[kind], ids(catalogue[kind]));
  for (const { id, colourways, sizes } of catalogue.frames) {
    const cost = costs.frames[id];
    if (cost === undefined) continue;
    const codes = colourways.map(({ code }) => code);
    look(['frames', id, 'colourways'], cost.colourways, codes);
    look(['frames', id, 'sizes'], cost.sizes, ids(sizes));
  }
  for (const { id, stock } of catalogue.materials)
    look(['materials', id, 'stock'], costs.materials[id]?.stock ?? {}, ids(stock));
  return faults;
}

/** A warning where git would carry the costs to wherever the shop's files go. */
function committed(file: string): string | null {
  const found = spawnSync('git', ['-C', dirname(file), 'ls-files', '--error-unmatch', '--', basename(file)]);
  if (found.status !== 0) return null;
  return `${file} is committed, so whoever sees the repository sees your costs: git rm --cached ${file}`;
}

/** The costs in a file; null where there is no such file. */
export function readCosts(file: string, catalogue: Catalogue): CostReading {
  if (!existsSync(file)) return { ok: true, costs: null, warning: null };
  const decoded = decodeSource({ path: file, bytes: readFileSync(file) });
  if (!decoded.ok) return { ok: false, faults: [decoded.fault] };
  const { currency: code, currencyDigits: digits } = catalogue.shop;
  const entry = readEntry('costs', readOrigin(decoded.source), costsSchema(moneyIn({ code, digits })));
  if (entry.value === null) return { ok: false, faults: entry.faults };
  const unknown = unknownIds(entry.origin, entry.value, catalogue);
  if (unknown.length > 0) return { ok: false, faults: unknown };
  return { ok: true, costs: entry.value, warning: committed(file) };
}
