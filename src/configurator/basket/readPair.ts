/** A held pair read against the shop as it is now: its request, its names, and what of it is no longer had. */

import type { Frame } from '../../catalogue/frame.ts';
import { sizeNameOf } from '../../catalogue/sizeNames.ts';
import type { PairRequest } from '../../quote/request.ts';
import type { Choices } from '../choices.ts';
import type { FieldFault } from '../fieldFault.ts';
import { type NotHad, onlyOffered } from '../keeping/offered.ts';
import type { HeldPair } from '../keeping/parts.ts';
import { readEntries } from '../readEntries.ts';
import type { ShopData } from '../shopData.ts';

/** What a pair is made of, by the shop's names. */
export interface PairNames {
  readonly model: string;
  readonly size: string;
  readonly colourway: string;
  readonly wearer: Choices['wearer'];
  readonly use: Choices['use'];
  /** Design, material, tint and coating; options that were not chosen are left out. */
  readonly lenses: readonly string[];
}

export interface PairRead {
  readonly names: PairNames;
  readonly request: PairRequest;
  readonly faults: readonly FieldFault[];
  readonly notHad: readonly NotHad[];
}

/** A held pair on a civil date. */
export function readPair(held: HeldPair, frame: Frame, data: ShopData, date: string): PairRead {
  const { entries, notHad } = onlyOffered(held.entries, frame, data);
  const { choices, request, faults } = readEntries(entries, { frame, data, date });
  const [pair] = request.pairs;
  if (pair === undefined) throw new RangeError('Entries were read as no pair at all.');
  return { names: namesOf(choices, frame, data), request: pair, faults, notHad };
}

function namesOf(choices: Choices, frame: Frame, data: ShopData): PairNames {
  const { size, colourway, wearer, use, design, material, tint, coating } = choices;
  const named = (all: readonly { readonly id: string; readonly name: string }[], id: string | null) =>
    all.find((one) => one.id === id)?.name;
  return {
    model: frame.model,
    size: sizeNameOf(frame, size),
    colourway: frame.colourways.find(({ code }) => code === colourway)?.name ?? colourway,
    wearer,
    use,
    lenses: [
      named(data.designs, design),
      named(data.materials, material),
      named(data.tints, tint),
      named(data.coatings, coating),
    ].filter((name) => name !== undefined),
  };
}
