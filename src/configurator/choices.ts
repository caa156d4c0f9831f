/** What holds where the visitor has not chosen: what comes with the frame, else the first of the list that goes with it. */

import { USES, type Use } from '../catalogue/design.ts';
import type { Frame } from '../catalogue/frame.ts';
import { BLANK_CHOICES, type LensesRequest, WEARERS, type Wearer } from '../quote/request.ts';
import { type Entries, textOf } from './fields.ts';
import type { ShopData } from './shopData.ts';

export interface Choices {
  readonly size: string;
  readonly colourway: string;
  readonly wearer: Wearer;
  readonly use: Use;
  readonly design: string;
  readonly material: string;
  readonly tint: string | null;
  readonly coating: string | null;
  readonly blank: NonNullable<LensesRequest['blank']>;
}

/** Upper edge of category 3 (College of Optometrists, quoting BS EN ISO 12312-1:2013). */
const SUN_TRANSMITTANCE = 0.18;

interface Named {
  readonly id: string;
}

/** The option that was chosen, else the included one if it `fits`, else the first that does, else the first. */
function pick<T extends Named>(
  all: readonly T[],
  chosen: string,
  fits: (one: T) => boolean,
  included: string | null | undefined,
): T | undefined {
  return (
    all.find(({ id }) => id === chosen) ??
    all.find((one) => one.id === included && fits(one)) ??
    all.find(fits) ??
    all[0]
  );
}

/** The lenses that come with a frame on a day, with no code and whatever else is in the order. */
function includedLens({ collection, id }: Frame, { promotions }: ShopData, date: string) {
  return promotions.flatMap(({ gift, code, scope, starts, ends }) =>
    gift.kind === 'included-lens' &&
    code === null &&
    scope.leastPairs < 2 &&
    !scope.leastGoodsMinor &&
    (scope.collections?.includes(collection) ?? true) &&
    (scope.frames?.includes(id) ?? true) &&
    (starts ?? date) <= date &&
    date <= (ends ?? date)
      ? gift
      : [],
  )[0];
}

/** Every choice of a worksheet, made or not. */
export function choicesOf(entries: Entries, frame: Frame, data: ShopData, date: string): Choices {
  const included = includedLens(frame, data, date);
  const wearer = WEARERS.find((one) => one === textOf(entries, 'wearer')) ?? frame.wearer;
  const use = USES.find((one) => one === textOf(entries, 'use')) ?? 'distance';
  const design = pick(
    data.designs,
    textOf(entries, 'design'),
    ({ uses }) => uses.includes(use),
    included?.design,
  );
  const material = pick(
    data.materials,
    textOf(entries, 'material'),
    ({ id, mountings, impactResistant }) =>
      (design?.materials.includes(id) ?? true) &&
      mountings.includes(frame.mounting.kind) &&
      (wearer === 'adult' || impactResistant),
    included?.material,
  );
  const tint = pick(
    data.tints,
    textOf(entries, 'tint'),
    ({ kind, states, materials }) =>
      materials.includes(material?.id ?? '') &&
      (frame.sun ? states.some(({ transmittance }) => transmittance <= SUN_TRANSMITTANCE) : kind === 'clear'),
    included?.tint,
  );
  const coating = pick(
    data.coatings,
    textOf(entries, 'coating'),
    ({ materials, tints }) => materials.includes(material?.id ?? '') && tints.includes(tint?.id ?? ''),
    included?.coating,
  );
  return {
    ...frameChoice(entries, frame),
    wearer,
    use,
    design: design?.id ?? '',
    material: material?.id ?? '',
    tint: tint?.id ?? null,
    coating: coating?.id ?? null,
    blank: BLANK_CHOICES.find((one) => one === textOf(entries, 'blank')) ?? 'auto',
  };
}

/** Size and colourway: as chosen, else the first that is made and not sold out. */
function frameChoice(entries: Entries, frame: Frame): Pick<Choices, 'size' | 'colourway'> {
  const all = frame.sizes.flatMap(({ id }) =>
    frame.colourways.map(({ code, stock }) => ({ size: id, colourway: code, stock })),
  );
  const size = textOf(entries, 'size');
  const colourway = textOf(entries, 'colourway');
  const open = all.filter(
    (one) =>
      (size === '' || one.size === size) &&
      (colourway === '' || one.colourway === colourway) &&
      !frame.notOffered.some((not) => not.size === one.size && not.colourway === one.colourway),
  );
  const found = open.find(({ stock }) => stock !== 'sold-out') ?? open[0] ?? all[0];
  return { size: size || (found?.size ?? ''), colourway: colourway || (found?.colourway ?? '') };
}
