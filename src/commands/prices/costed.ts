/** Frames and lenses with what they cost the shop. */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Coating } from '../../catalogue/coating.ts';
import type { Design } from '../../catalogue/design.ts';
import type { Material, StockBlanks } from '../../catalogue/material.ts';
import type { Costs } from '../../catalogue/schema/costs.ts';
import type { Tint } from '../../catalogue/tint.ts';
import { listSums } from '../../pricing/listPrice.ts';
import type { PricedFrame, PricedLenses } from '../../pricing/pair.ts';
import { stockRangesFor } from '../../quote/stockBlank.ts';

interface Costed<Priced> {
  readonly priced: Priced;
  readonly costMinor: number;
  /** The same for all that are priced alike where no promotion tells them apart. */
  readonly key: string;
}
export type CostedFrame = Costed<PricedFrame>;
export type CostedLenses = Costed<PricedLenses>;

/** Every frame that has a cost, once for each price and cost of its sizes and colourways. */
export function costedFrames({ frames }: Catalogue, costs: Costs) {
  const found: CostedFrame[] = [];
  const unknown: string[] = [];
  for (const frame of frames) {
    const cost = costs.frames[frame.id];
    if (cost === undefined) unknown.push(`frames/${frame.id}`);
    const seen = new Set<string>();
    for (const size of frame.sizes)
      for (const colourway of frame.colourways) {
        const added = (cost?.colourways[colourway.code] ?? 0) + (cost?.sizes[size.id] ?? 0);
        const costMinor = (cost?.cost ?? 0) + added;
        const priced = { frame, size, colourway };
        const key = String(listSums({ frame: priced, lenses: null }).frame);
        if (seen.has(`${key} ${costMinor}`)) continue;
        seen.add(`${key} ${costMinor}`);
        found.push({ priced, costMinor, key });
      }
  }
  return { frames: found, unknown };
}

/** Without strength, so that no surcharge falls due. */
const NO_STRENGTH = { strongestMeridianD: 0, cylinderD: 0, prism: 0, addD: 0 };

interface Options {
  readonly design: Design;
  readonly material: Material;
  readonly tint: Tint;
  readonly coating: Coating;
}

/** Every set of lens options that the shop declares together. */
function* declared({ designs, materials, tints, coatings }: Catalogue): Generator<Options> {
  for (const design of designs)
    for (const material of materials) {
      if (!design.materials.includes(material.id)) continue;
      for (const tint of tints) {
        if (!tint.materials.includes(material.id) || !tint.designs.includes(design.id)) continue;
        for (const coating of coatings)
          if (coating.materials.includes(material.id) && coating.tints.includes(tint.id))
            yield { design, material, tint, coating };
      }
    }
}

/** All lenses that the shop declares, made to order and ready-made, at what they cost. */
export function costedLenses(catalogue: Catalogue, costs: Costs) {
  const unknown = new Set<string>();
  const cost = (source: string, known: number | null | undefined) => {
    if (known === null || known === undefined) unknown.add(source);
    return known ?? 0;
  };
  const lenses: CostedLenses[] = [];
  for (const options of declared(catalogue)) {
    const { design, material, tint, coating } = options;
    const own = costs.materials[material.id];
    const extras =
      cost(`lenses/tints/${tint.id}`, costs.tints[tint.id]) +
      cost(`lenses/coatings/${coating.id}`, costs.coatings[coating.id]);
    const add = (stock: StockBlanks | null, costMinor: number) => {
      const priced = { ...options, stock, ...NO_STRENGTH };
      const sum = listSums({ frame: null, lenses: priced }).lenses;
      const key = [sum, design.id, material.id, stock?.id ?? ''].join(' ');
      lenses.push({ priced, costMinor: costMinor + extras, key });
    };
    if (material.surfaced !== null)
      add(
        null,
        cost(`lenses/designs/${design.id}`, costs.designs[design.id]) +
          cost(`lenses/materials/${material.id}`, own?.cost),
      );
    for (const stock of stockRangesFor(design, material, tint.id, coating.id))
      add(stock, cost(`lenses/materials/${material.id} stock ${stock.id}`, own?.stock[stock.id]));
  }
  return { lenses, unknown: [...unknown] };
}
