/** The lens options of the shop by kind, what each goes with, and where its page is. */

import type { Catalogue } from '../catalogue/catalogue.ts';
import type { OptionText } from '../catalogue/limit.ts';

export const KINDS = ['designs', 'materials', 'tints', 'coatings'] as const;
export type Kind = (typeof KINDS)[number];

/** Options of a kind in the shop's own order. */
export function optionsOf(catalogue: Catalogue, kind: Kind): readonly OptionText[] {
  return catalogue[kind];
}

/** Address of an option's page in the shop's first language. */
export function optionHref(kind: Kind, id: string): string {
  return `/lenses/${kind}/${id}/`;
}

/** Options that this one can be had with, by kind; kinds without a declared list are left out. */
export interface Partners {
  readonly kind: Kind;
  readonly options: readonly OptionText[];
}

/** What an option goes with, from the lists that the options declare for each other. */
export function partners(catalogue: Catalogue, kind: Kind, id: string): readonly Partners[] {
  const { designs, materials, tints, coatings } = catalogue;
  const named = (all: readonly OptionText[], ids: readonly string[]) => all.filter((o) => ids.includes(o.id));
  switch (kind) {
    case 'designs': {
      const made = designs.find((d) => d.id === id)?.materials ?? [];
      return [
        { kind: 'materials', options: named(materials, made) },
        { kind: 'tints', options: tints.filter((t) => t.designs.includes(id)) },
      ];
    }
    case 'materials':
      return [
        { kind: 'designs', options: designs.filter((d) => d.materials.includes(id)) },
        { kind: 'tints', options: tints.filter((t) => t.materials.includes(id)) },
        { kind: 'coatings', options: coatings.filter((c) => c.materials.includes(id)) },
      ];
    case 'tints': {
      const tint = tints.find((t) => t.id === id);
      return [
        { kind: 'designs', options: named(designs, tint?.designs ?? []) },
        { kind: 'materials', options: named(materials, tint?.materials ?? []) },
        { kind: 'coatings', options: coatings.filter((c) => c.tints.includes(id)) },
      ];
    }
    case 'coatings': {
      const coating = coatings.find((c) => c.id === id);
      return [
        { kind: 'materials', options: named(materials, coating?.materials ?? []) },
        { kind: 'tints', options: named(tints, coating?.tints ?? []) },
      ];
    }
  }
}
