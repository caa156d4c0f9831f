/** The nouns of the shop from what its files say: lists that say `all` are filled in, text becomes HTML. */
import type { Coating } from '../coating.ts';
import type { Content } from '../content.ts';
import { type Ids, namesOfFrames, sound } from '../content.ts';
import type { Design } from '../design.ts';
import type { FrameOutline, FrameSize, ListedFrame } from '../frame.ts';
import type { Material } from '../material.ts';
import type { Promotion } from '../promotion.ts';
import { renderMarkdown } from '../reading/markdown.ts';
import type { Tint } from '../tint.ts';

/** Entries in the order of the shop: by `order`, then by name. */
function inOrder<T extends { readonly order: number }>(
  entries: readonly { readonly id: string; readonly origin: { readonly body: string }; readonly value: T }[],
  nameOf: (value: T) => string,
) {
  return entries
    .toSorted((a, b) => a.value.order - b.value.order || compareText(nameOf(a.value), nameOf(b.value)))
    .map(({ id, origin, value: { order: _, ...rest } }) => ({
      ...rest,
      id,
      story: renderMarkdown(origin.body),
    }));
}

/** The same on every machine, whatever its language. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Every design, material, tint and coating, with the lists of ids complete and in the shop's order. */
export function resolveOptions(content: Content) {
  const byName = ({ name }: { readonly name: string }) => name;
  const designs = inOrder(sound(content.designs), byName);
  const materials = inOrder(sound(content.materials), byName);
  const tints = inOrder(sound(content.tints), byName);
  const coatings = inOrder(sound(content.coatings), byName);
  const fill = (ids: Ids, from: readonly { readonly id: string }[]) =>
    ids === 'all' ? from.map(({ id }) => id) : ids;
  return {
    designs: designs.map((one): Design => ({ ...one, materials: fill(one.materials, materials) })),
    materials: materials.map(
      (one): Material => ({
        ...one,
        stock: one.stock.map((stock) => ({
          ...stock,
          coatings: fill(stock.coatings, coatings),
          tints: fill(stock.tints, tints),
        })),
      }),
    ),
    tints: tints.map(
      (one): Tint => ({
        ...one,
        materials: fill(one.materials, materials),
        designs: fill(one.designs, designs),
      }),
    ),
    coatings: coatings.map(
      (one): Coating => ({
        ...one,
        materials: fill(one.materials, materials),
        tints: fill(one.tints, tints),
      }),
    ),
  };
}

/** The promotions in the order in which they are tried. */
export function resolvePromotions(content: Content): Promotion[] {
  const former = namesOfFrames(content);
  return inOrder(sound(content.promotions), ({ title }) => title).map((promotion) => {
    const { frames } = promotion.scope;
    if (frames === null) return promotion;
    const now = [...new Set(frames.map((id) => former.get(id) ?? id))];
    return { ...promotion, scope: { ...promotion.scope, frames: now } };
  });
}

/** The frames by model, with their outlines. */
export function resolveFrames(
  content: Content,
  outlines: ReadonlyMap<string, readonly FrameOutline[]>,
): ListedFrame[] {
  return sound(content.frames)
    .map(({ id, origin, value }): ListedFrame => {
      const made = outlines.get(id) ?? [];
      const sizes = value.sizes.flatMap((size, index): FrameSize[] => {
        const outline = made[index];
        return outline === undefined ? [] : [{ ...size, outline }];
      });
      return { ...value, id, story: renderMarkdown(origin.body), sizes };
    })
    .toSorted((a, b) => compareText(a.model, b.model) || compareText(a.id, b.id));
}
