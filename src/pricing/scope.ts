import type { PromotionScope } from '../catalogue/promotion.ts';
import type { PricedPair } from './pair.ts';

/**
 * Whether a promotion looks at this pair: each list that the scope gives must hold the pair's choice. What a pair
 * does not have (its own frame, no lenses, no tint) is in no list. Sums and counts of the order are judged elsewhere.
 */
export function pairInScope(scope: PromotionScope, { frame, lenses }: PricedPair): boolean {
  const holds = (list: readonly string[] | null, id: string | undefined): boolean =>
    list === null || (id !== undefined && list.includes(id));
  return (
    holds(scope.collections, frame?.frame.collection) &&
    holds(scope.frames, frame?.frame.id) &&
    holds(scope.designs, lenses?.design.id) &&
    holds(scope.materials, lenses?.material.id) &&
    holds(scope.tints, lenses?.tint?.id) &&
    holds(scope.coatings, lenses?.coating?.id)
  );
}
