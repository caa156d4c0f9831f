/** An option that no frame and no pair of lenses can ever use is a slip: a list too short, a limit too strict. */
import { type Check, type Content, sound } from '../content.ts';
import type { DeclaredLimit, OptionKind } from '../limit.ts';
import { faultAt } from '../reading/entry.ts';

/** Ids of one conceivable package. `tint` and `coating` are null for none. */
type Package = Readonly<Record<OptionKind, string | null>>;

type Ids = 'all' | readonly string[];

const has = (ids: Ids, id: string | null) => id === null || ids === 'all' || ids.includes(id);

/** Whether a declared limit lets the package through. */
function allows({ kind, level, ids }: DeclaredLimit, of: Package): boolean {
  if (level === 'caution') return true;
  const named = Object.entries(ids) as [OptionKind, readonly string[]][];
  const isIn = ([option, list]: [OptionKind, readonly string[]]) => list.includes(of[option] ?? '');
  return kind === 'only-with' ? named.every(isIn) : named.length === 0 || !named.every(isIn);
}

/** Frames as far as options can tell them apart: two of one mounting and wearer count once unless a limit names one. */
function frameKinds(content: Content) {
  const frames = sound(content.frames);
  const named = new Set(
    [
      ...sound(content.designs),
      ...sound(content.materials),
      ...sound(content.tints),
      ...sound(content.coatings),
    ]
      .flatMap(({ value }) => value.limits)
      .flatMap(({ ids }) => ids.frame ?? []),
  );
  const kinds = new Map<
    string,
    { frame: string; mounting: string; wearer: string; faceFormDeg: number; bMm: number }
  >();
  for (const { id, value } of frames) {
    const { mounting, wearer, faceFormDeg } = value;
    const key = named.has(id) ? id : `${mounting.kind} ${wearer}`;
    const bMm = Math.max(...value.sizes.map((size) => size.bMm));
    const before = kinds.get(key);
    kinds.set(key, {
      frame: id,
      mounting: mounting.kind,
      wearer,
      faceFormDeg: Math.min(faceFormDeg, before?.faceFormDeg ?? faceFormDeg),
      bMm: Math.max(bMm, before?.bMm ?? bMm),
    });
  }
  return [...kinds.values()];
}

type Used = Record<'design' | 'material' | 'tint' | 'coating', Set<string>>;

/** Every option that stands in a package which the declarations allow in some frame. */
function usedOptions(content: Content): Used {
  const used: Used = { design: new Set(), material: new Set(), tint: new Set(), coating: new Set() };
  const none = { id: null, value: null };
  const frames = frameKinds(content);
  const tints = [...sound(content.tints), none];
  const coatings = [...sound(content.coatings), none];
  for (const design of sound(content.designs)) {
    for (const material of sound(content.materials).filter(({ id }) => has(design.value.materials, id))) {
      for (const tint of tints) {
        if (tint.value && !(has(tint.value.materials, material.id) && has(tint.value.designs, design.id)))
          continue;
        for (const coating of coatings) {
          if (
            coating.value &&
            !(has(coating.value.materials, material.id) && has(coating.value.tints, tint.id))
          )
            continue;
          const limits = [design, material, tint, coating].flatMap(({ value }) => value?.limits ?? []);
          const ids = { design: design.id, material: material.id, tint: tint.id, coating: coating.id };
          const fits = frames.some(
            ({ frame, mounting, wearer, faceFormDeg, bMm }) =>
              material.value.mountings.some((made) => made === mounting) &&
              faceFormDeg <= design.value.faceFormDeg &&
              leastDepthMm(design.value) <= bMm &&
              limits.every((limit) => allows(limit, { ...ids, frame, mounting, wearer })),
          );
          if (!fits) continue;
          used.design.add(design.id);
          used.material.add(material.id);
          if (tint.id !== null) used.tint.add(tint.id);
          if (coating.id !== null) used.coating.add(coating.id);
        }
      }
    }
  }
  return used;
}

/** Least B in which a design can be fitted at all, mm. */
function leastDepthMm({
  corridor,
  segment,
}: ReturnType<typeof sound<Content['designs'][number]['value'] & {}>>[number]['value']): number {
  if (segment !== null) return segment.leastHeightMm;
  if (corridor === null) return 0;
  return (corridor.leastFittingHeightMm ?? corridor.lengthMm + 4) + corridor.leastAboveCrossMm;
}

/** Options that can never be used; says nothing while another fault may be the reason. */
export const checkUsable: Check = (content) => {
  const kinds = {
    design: content.designs,
    material: content.materials,
    tint: content.tints,
    coating: content.coatings,
  };
  const all = [...content.frames, ...Object.values(kinds).flat()];
  if (content.frames.length === 0 || all.some(({ value }) => value === null)) return [];
  const used = usedOptions(content);
  return Object.entries(kinds).flatMap(([kind, entries]) =>
    entries
      .filter(({ id }) => !used[kind as keyof Used].has(id))
      .map(({ id, origin }) =>
        faultAt(origin, ['name'], {
          code: 'never-usable',
          expected: `a package and a frame in which the ${kind} "${id}" can be had`,
          received:
            'none, by the lists of materials, designs and tints, the limits, mountings and face forms of all files',
          hint: `Name "${id}" in the lists of the options that it goes with, loosen a limit, or remove the file.`,
        }),
      ),
  );
};
