/** The pairs whose price an owner watches must be made of what the shop has. */
import { type Check, type Content, faultsOf } from '../content.ts';
import type { ContentFault } from '../fault.ts';
import { listNames, nearest } from '../nearest.ts';
import type { TypicalPair } from '../priceHabits.ts';
import { faultAt } from '../reading/entry.ts';

type Part = 'frame' | 'size' | 'colourway' | 'design' | 'material' | 'tint' | 'coating';

/** What each part may name; null where that cannot be told. */
function known(content: Content, { frame }: TypicalPair): Readonly<Record<Part, readonly string[] | null>> {
  const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);
  const own = content.frames.find(({ id }) => id === frame)?.value ?? null;
  return {
    frame: ids(content.frames),
    size: own?.sizes.map(({ id }) => id) ?? null,
    colourway: own?.colourways.map(({ code }) => code) ?? null,
    design: ids(content.designs),
    material: ids(content.materials),
    tint: ids(content.tints),
    coating: ids(content.coatings),
  };
}

/** Unknown names below `prices.typical` of shop.yaml. */
export const checkPrices: Check = (content) => {
  const { shop } = content;
  return faultsOf(shop === null ? [] : [shop], ({ origin, value }) =>
    value.prices.typical.flatMap((pair, at): ContentFault[] =>
      Object.entries(known(content, pair)).flatMap(([part, names]) => {
        const name = pair[part as Part];
        if (name === null || names === null || names.includes(name)) return [];
        const meant = nearest(name, names);
        return faultAt(origin, ['prices', 'typical', at, part], {
          code: 'unknown-reference',
          expected: `a ${part} of the shop: ${listNames(names)}`,
          received: `"${name}"`,
          hint: meant === null ? 'Use one of these.' : `Did you mean "${meant}"?`,
        });
      }),
    ),
  );
};
