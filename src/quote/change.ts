/** Changes to a package by what the shop has: the steps of a remedy, an alternative, a way out. */

import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import { sizeNameOf } from '../catalogue/sizeNames.ts';
import { say } from '../catalogue/words.ts';
import type { PairRequest } from './request.ts';

/** From the smallest change for a wearer to the largest. */
export const CHANGE_KINDS = [
  'blank',
  'size',
  'coating',
  'material',
  'tint',
  'design',
  'colourway',
  'frame',
] as const;
export type ChangeKind = (typeof CHANGE_KINDS)[number];

/** What is chosen instead; for a frame, its size and colourway too. */
export interface PackageChange {
  readonly kind: ChangeKind;
  readonly value: string;
  readonly size?: string;
  readonly colourway?: string;
}

/** Every single change of one kind, in the order of the shop, the present choice left out. */
export function changesOf(offer: Offer, pair: PairRequest, kind: ChangeKind): readonly PackageChange[] {
  const frame = offer.frames.find(({ id }) => id === pair.frame);
  const options: Readonly<Record<Exclude<ChangeKind, 'frame'>, readonly string[]>> = {
    blank: ['stock', 'surfaced'],
    size: frame?.sizes.map(({ id }) => id) ?? [],
    material: offer.materials.map(({ id }) => id),
    // A design for another use would leave the wearer without what was asked for.
    design: offer.designs.filter(({ uses }) => uses.includes(pair.lenses.use)).map(({ id }) => id),
    coating: offer.coatings.map(({ id }) => id),
    tint: offer.tints.map(({ id }) => id),
    colourway: frame?.colourways.map(({ code }) => code) ?? [],
  };
  if (kind === 'frame') return frameChanges(offer, pair).flat();
  return options[kind].filter((value) => value !== presentOf(pair, kind)).map((value) => ({ kind, value }));
}

function presentOf(pair: PairRequest, kind: Exclude<ChangeKind, 'frame'>): string | null | undefined {
  if (kind === 'size') return pair.size;
  if (kind === 'colourway') return pair.colourway;
  return pair.lenses[kind];
}

/**
 * Other frames for the same light, each size in the first colourway that can be had: those made for who wears the
 * pair, and, where the present one is made for somebody else, those made like it. The latter are for whom the former
 * leave without.
 */
export function frameChanges(offer: Offer, pair: PairRequest): readonly (readonly PackageChange[])[] {
  const present = offer.frames.find(({ id }) => id === pair.frame);
  if (present === undefined) return [];
  const wearers = new Set([
    pair.wearer === 'child' || pair.wearer === 'adult' ? pair.wearer : present.wearer,
  ]);
  return [...wearers.add(present.wearer)].map((madeFor) =>
    offer.frames
      .filter(({ id, wearer, sun }) => id !== present.id && wearer === madeFor && sun === present.sun)
      .flatMap((frame) => frame.sizes.flatMap(({ id }) => changeTo(frame, id))),
  );
}

function changeTo(frame: Frame, size: string): readonly PackageChange[] {
  const colourway = firstColourway(frame, size);
  return colourway === null ? [] : [{ kind: 'frame', value: frame.id, size, colourway }];
}

function firstColourway(frame: Frame, size: string): string | null {
  const can = frame.colourways.filter(
    ({ code, stock }) =>
      stock !== 'sold-out' && !frame.notOffered.some((not) => not.size === size && not.colourway === code),
  );
  return can[0]?.code ?? null;
}

/** A change as the shop names it. */
export function changeName(offer: Offer, pair: PairRequest, { kind, value, size }: PackageChange): string {
  const frame = offer.frames.find(({ id }) => id === (kind === 'frame' ? value : pair.frame));
  const nameOfSize = (id: string) => (frame ? sizeNameOf(frame, id) : id);
  const named = (list: readonly { readonly id: string; readonly name: string }[]) =>
    list.find(({ id }) => id === value)?.name ?? value;
  switch (kind) {
    case 'design':
      return named(offer.designs);
    case 'material':
      return named(offer.materials);
    case 'tint':
      return named(offer.tints);
    case 'coating':
      return named(offer.coatings);
    case 'colourway':
      return frame?.colourways.find(({ code }) => code === value)?.name ?? value;
    case 'frame':
      return `${frame?.model ?? value} ${nameOfSize(size ?? '')}`.trim();
    case 'size':
      return nameOfSize(value);
    case 'blank':
      return say(offer.words, `worksheet.option.blank.${value}`);
    default:
      return value;
  }
}
