/** A shop's own tolerance profile: a standard with some limits replaced. */
import { LENS_KINDS, type LensKind, type LensTolerances, type ToleranceStandard } from './table.ts';

/** What a shop changes, by kind of lens; a change of null gives up a limit. */
export type ProfileChanges = Readonly<Partial<Record<LensKind, Partial<LensTolerances>>>>;

/**
 * The base with the shop's changes. The profile counts as the shop's own, except over a base from memory: adopting
 * remembered figures does not verify them, so that such a profile stays "from memory".
 */
export function shopProfile(
  title: string,
  base: ToleranceStandard,
  changes: ProfileChanges,
): ToleranceStandard {
  const merge = (kind: LensKind): LensTolerances => {
    const changed = changes[kind] ?? {};
    const placed = { ...base.lenses[kind].placed, ...changed.placed };
    return { ...base.lenses[kind], ...changed, placed };
  };
  const [single, multifocal, progressive] = LENS_KINDS.map(merge) as [
    LensTolerances,
    LensTolerances,
    LensTolerances,
  ];
  return {
    id: `shop-${base.id}`,
    title,
    basis: base.basis === 'from memory' ? 'from memory' : 'shop',
    note: [`Based on ${base.title}.`, base.note].filter((part) => part !== '').join(' '),
    lenses: { 'single-vision': single, multifocal, progressive },
  };
}
