/** What costs.yaml holds: what things cost the shop. It lies beside the content folder, never in it. */
import * as z from 'zod/mini';
import { about } from './about.ts';
import { fields, type MoneyFields, orElse } from './fields.ts';

/** Costs of frames and options by id, minor units. */
type Table<T> = Readonly<Record<string, T>>;

export interface FrameCost {
  readonly cost: number;
  /** Added for a colourway or a size. */
  readonly colourways: Table<number>;
  readonly sizes: Table<number>;
}

export interface MaterialCost {
  /** Null: not known. */
  readonly cost: number | null;
  /** Of ready-made lenses, design and material together. */
  readonly stock: Table<number>;
}

export interface Costs {
  readonly frames: Table<FrameCost>;
  readonly designs: Table<number>;
  readonly materials: Table<MaterialCost>;
  readonly tints: Table<number>;
  readonly coatings: Table<number>;
  /** Bench time and small parts, a pair. */
  readonly work: number;
  /** What sending a parcel costs; null: left out, and so is what shoppers pay for it. */
  readonly parcel: number | null;
}

function table<Item extends z.core.$ZodType>(item: Item) {
  const error = 'a map from ids to costs';
  return orElse(
    z.record(z.string(), item, { error }),
    {} as z.core.output<z.ZodMiniRecord<z.ZodMiniString, Item>>,
  );
}

/** Schema of the file; every part may be left out. */
export function costsSchema(money: MoneyFields) {
  const only = (cost: number): FrameCost => ({ cost, colourways: {}, sizes: {} });
  const frame = z.union(
    [
      z.pipe(money.price, z.transform(only)),
      fields({
        cost: about('Of the frame.', money.price),
        colourways: about('What each costs more or less, by code.', table(money.difference)),
        sizes: about('What each costs more or less, by id.', table(money.difference)),
      }),
    ],
    { error: 'a cost such as "48.00", in quotes, or { cost, colourways, sizes }' },
  );
  const material = z.union(
    [
      z.pipe(
        money.price,
        z.transform((cost): MaterialCost => ({ cost, stock: {} })),
      ),
      fields({
        cost: about('Of a pair. Default null: not known.', z._default(z.nullable(money.price), null)),
        stock: about(
          'Of a pair of ready-made lenses by id, design and material together.',
          table(money.price),
        ),
      }),
    ],
    { error: 'a cost such as "9.00", in quotes, or { cost, stock }' },
  );
  return fields({
    frames: about('By id: the cost of a frame, with what its colourways and sizes add.', table(frame)),
    designs: about('By id: the cost of a pair.', table(money.price)),
    materials: about('By id: the cost of a pair.', table(material)),
    tints: about('By id: the cost of a pair.', table(money.price)),
    coatings: about('By id: the cost of a pair.', table(money.price)),
    work: about('Bench time and small parts, a pair. Default nothing.', orElse(money.price, 0)),
    parcel: about(
      'Sending a parcel. Default null: parcels are left out of the reckoning.',
      z._default(z.nullable(money.price), null),
    ),
  });
}
