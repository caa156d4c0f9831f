/** What costs.yaml holds: what things cost the shop. It lies beside the content folder, never in it. */
import * as z from 'zod/mini';
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
      fields({ cost: money.price, colourways: table(money.difference), sizes: table(money.difference) }),
    ],
    { error: 'a cost such as "48.00", in quotes, or { cost, colourways, sizes }' },
  );
  const material = z.union(
    [
      z.pipe(
        money.price,
        z.transform((cost): MaterialCost => ({ cost, stock: {} })),
      ),
      fields({ cost: z._default(z.nullable(money.price), null), stock: table(money.price) }),
    ],
    { error: 'a cost such as "9.00", in quotes, or { cost, stock }' },
  );
  return fields({
    /** Of a frame, with what its colourways and sizes add. */
    frames: table(frame),
    /** Of a pair. */
    designs: table(money.price),
    materials: table(material),
    tints: table(money.price),
    coatings: table(money.price),
    /** Default "0". */
    work: orElse(money.price, 0),
    /** Default null: parcels are left out of the reckoning. */
    parcel: z._default(z.nullable(money.price), null),
  });
}
