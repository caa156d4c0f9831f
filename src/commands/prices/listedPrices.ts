/** Every price that the shop's files state, one row each. */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Surcharge } from '../../catalogue/limit.ts';

export const PRICE_KINDS = [
  'frame',
  'colourway',
  'size',
  'design',
  'material',
  'stock',
  'tint',
  'coating',
  'surcharge',
  'shipping',
  'package',
] as const;
export type PriceKind = (typeof PRICE_KINDS)[number];

export interface PriceRow {
  readonly kind: PriceKind;
  /** The file, such as `frames/dunlin`. */
  readonly source: string;
  /** What tells it apart within its file; the same before and after a change. */
  readonly part: string;
  readonly what: string;
  readonly minor: number;
}

const bandOf = ({ of, above, upTo }: Surcharge) =>
  `${of} above ${above}${upTo === null ? '' : ` to ${upTo}`}`;

function surcharges(source: string, name: string, all: readonly Surcharge[]): PriceRow[] {
  return all.map((one) => ({
    kind: 'surcharge',
    source,
    part: bandOf(one),
    what: `${name}: ${one.label}`,
    minor: one.priceMinor,
  }));
}

function framePrices({ frames }: Catalogue): PriceRow[] {
  return frames.flatMap(({ id, model, priceMinor, colourways, sizes }): PriceRow[] => {
    const source = `frames/${id}`;
    return [
      { kind: 'frame', source, part: 'price', what: `Frame ${model}`, minor: priceMinor },
      ...colourways.map(
        ({ code, name, priceDifferenceMinor: minor }): PriceRow => ({
          ...{ kind: 'colourway', source, part: code, what: `${model} in ${name}, difference`, minor },
        }),
      ),
      ...sizes.map(
        ({ id: size, priceDifferenceMinor: minor }): PriceRow => ({
          ...{ kind: 'size', source, part: size, what: `${model} in ${size}, difference`, minor },
        }),
      ),
    ];
  });
}

/** All of them, by kind and in the shop's order. */
export function listedPrices(catalogue: Catalogue): PriceRow[] {
  const { designs, materials, tints, coatings, shop } = catalogue;
  const option =
    (kind: PriceKind, folder: string) => (one: { id: string; name: string; priceMinor: number }) => ({
      kind,
      source: `lenses/${folder}/${one.id}`,
      part: 'price',
      what: one.name,
      minor: one.priceMinor,
    });
  return [
    ...framePrices(catalogue),
    ...designs.map(option('design', 'designs')),
    ...materials.map(option('material', 'materials')),
    ...materials.flatMap(({ id, name, stock }) =>
      stock.map(
        (blanks): PriceRow => ({
          kind: 'stock',
          source: `lenses/materials/${id}`,
          part: blanks.id,
          what: `${name}, ready-made ${blanks.id}`,
          minor: blanks.priceMinor,
        }),
      ),
    ),
    ...tints.map(option('tint', 'tints')),
    ...coatings.map(option('coating', 'coatings')),
    ...designs.flatMap((one) => surcharges(`lenses/designs/${one.id}`, one.name, one.surcharges)),
    ...materials.flatMap((one) => surcharges(`lenses/materials/${one.id}`, one.name, one.surcharges)),
    ...shop.shipping.map(
      ({ destinations, label, amountMinor }): PriceRow => ({
        kind: 'shipping',
        source: 'shop',
        part: destinations.join(' '),
        what: label,
        minor: amountMinor,
      }),
    ),
  ];
}
