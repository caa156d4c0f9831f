/** An option that no frame and no pair of lenses can ever use is a slip: a list too short, a limit too strict. */
import {
  type AuthoredCoating,
  type AuthoredDesign,
  type AuthoredMaterial,
  type AuthoredTint,
  type Check,
  type Content,
  type Ids,
  type Sound,
  sound,
} from '../content.ts';
import type { ContentFault } from '../fault.ts';
import type { DeclaredLimit, OptionKind } from '../limit.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';

/** Ids of one conceivable package in a frame. `tint` and `coating` are null for none. */
type Package = Readonly<Record<OptionKind, string | null>>;

const WEARERS = ['adult', 'child', 'one-eyed'] as const;

const has = (ids: Ids, id: string | null) => id === null || ids === 'all' || ids.includes(id);

/** Whether a declared limit lets the package through. */
function allows({ kind, level, ids }: DeclaredLimit, of: Package): boolean {
  if (level === 'caution') return true;
  const named = Object.entries(ids) as [OptionKind, readonly string[]][];
  const isIn = ([option, list]: [OptionKind, readonly string[]]) => list.includes(of[option] ?? '');
  return kind === 'only-with' ? named.every(isIn) : named.length === 0 || !named.every(isIn);
}

/** A frame as far as options can tell it from others. */
interface FrameKind {
  readonly frame: string;
  readonly mounting: string;
  /** The flattest and the deepest of the frames that count as one. */
  readonly faceFormDeg: number;
  readonly bMm: number;
}

/** Frames of one mounting count as one, unless a limit names one of them. */
function frameKinds(content: Content): FrameKind[] {
  const { designs, materials, tints, coatings } = content;
  const options = [...sound(designs), ...sound(materials), ...sound(tints), ...sound(coatings)];
  const named = new Set(options.flatMap(({ value }) => value.limits).flatMap(({ ids }) => ids.frame ?? []));
  const kinds = new Map<string, FrameKind>();
  for (const { id, value } of sound(content.frames)) {
    const key = named.has(id) ? id : value.mounting.kind;
    const before = kinds.get(key);
    kinds.set(key, {
      frame: id,
      mounting: value.mounting.kind,
      faceFormDeg: Math.min(value.faceFormDeg, before?.faceFormDeg ?? value.faceFormDeg),
      bMm: Math.max(before?.bMm ?? 0, ...value.sizes.map(({ bMm }) => bMm)),
    });
  }
  return [...kinds.values()];
}

interface Lenses {
  readonly design: Sound<AuthoredDesign>;
  readonly material: Sound<AuthoredMaterial>;
  readonly tint: Sound<AuthoredTint> | null;
  readonly coating: Sound<AuthoredCoating> | null;
}

/** All lenses that the lists of ids allow. */
function* lensesByLists(content: Content): Generator<Lenses> {
  const tints = [...sound(content.tints), null];
  const coatings = [...sound(content.coatings), null];
  for (const design of sound(content.designs)) {
    for (const material of sound(content.materials).filter(({ id }) => has(design.value.materials, id))) {
      const tinted = tints.filter(
        (tint) => goes(tint?.value.materials, material) && goes(tint?.value.designs, design),
      );
      const coated = coatings.filter((coating) => goes(coating?.value.materials, material));
      for (const tint of tinted) {
        for (const coating of coated) {
          if (tint === null || goes(coating?.value.tints, tint)) yield { design, material, tint, coating };
        }
      }
    }
  }
}

function goes(ids: Ids | undefined, { id }: { readonly id: string }): boolean {
  return ids === undefined || has(ids, id);
}

/** Whether some frame and wearer can have these lenses, as far as declarations tell. */
function fitsSome({ design, material, tint, coating }: Lenses, frames: readonly FrameKind[]): boolean {
  const limits = [design, material, tint, coating].flatMap((option) => option?.value.limits ?? []);
  const ids = {
    design: design.id,
    material: material.id,
    tint: tint?.id ?? null,
    coating: coating?.id ?? null,
  };
  return frames.some(
    ({ frame, mounting, faceFormDeg, bMm }) =>
      material.value.mountings.some((made) => made === mounting) &&
      faceFormDeg <= design.value.faceFormDeg &&
      leastDepthMm(design.value) <= bMm &&
      WEARERS.some((wearer) => limits.every((limit) => allows(limit, { ...ids, frame, mounting, wearer }))),
  );
}

/** Least B in which a design can be fitted at all, mm. */
function leastDepthMm({ corridor, segment }: AuthoredDesign): number {
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
  const frames = frameKinds(content);
  const used = new Set<string>();
  for (const lenses of lensesByLists(content)) {
    const keys = Object.entries(lenses).flatMap(([kind, option]) => (option ? [`${kind} ${option.id}`] : []));
    if (keys.some((key) => !used.has(key)) && fitsSome(lenses, frames)) for (const key of keys) used.add(key);
  }
  return Object.entries(kinds).flatMap(([kind, entries]) =>
    entries
      .filter(({ id }) => !used.has(`${kind} ${id}`))
      .map(({ id, origin }) => neverUsable(kind, id, origin)),
  );
};

function neverUsable(kind: string, id: string, origin: Origin): ContentFault {
  return faultAt(origin, ['name'], {
    code: 'never-usable',
    expected: `a package and a frame in which the ${kind} "${id}" can be had`,
    received:
      'none, by the lists of materials, designs and tints, the limits, mountings and face forms of all files',
    hint: `Name "${id}" in the lists of the options that it goes with, loosen a limit, or remove the file.`,
  });
}
