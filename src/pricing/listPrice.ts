/** The price list: what one pair costs before any promotion, shipping and tax. */

import type { Surcharge } from '../catalogue/limit.ts';
import { sizeName } from '../catalogue/sizeNames.ts';
import type { Charge } from './charge.ts';
import type { PairGoods } from './goods.ts';
import type { PricedFrame, PricedLenses, PricedPair } from './pair.ts';
import { surchargesFor } from './surcharges.ts';
import type { PriceWord } from './words.ts';

/**
 * Lines of the frame: its price, then what its colour and size add or take off where that is not 0.
 * `pair` is the index of the pair. Amounts in minor units.
 */
function frameCharges({ frame, colourway, size }: PricedFrame, pair: number): Charge[] {
  const slots = { model: frame.model, colourway: colourway.name, size: sizeName(size) };
  const line = (key: PriceWord, amountMinor: number): Charge => {
    return { kind: 'frame', pair, label: { key, slots }, amountMinor, source: `frames/${frame.id}` };
  };
  const lines = [line('price.frame', frame.priceMinor)];
  if (colourway.priceDifferenceMinor !== 0)
    lines.push(line('price.colourway', colourway.priceDifferenceMinor));
  if (size.priceDifferenceMinor !== 0) lines.push(line('price.size', size.priceDifferenceMinor));
  return lines;
}

/**
 * Lines of a pair of lenses: design and material, or the ready-made lenses that replace both; tint and coating,
 * also where they cost nothing, so that what is included is seen; then the surcharges of design and material.
 * Ready-made lenses have one price for their whole grid, so surcharges for strength do not come on top of it.
 */
function lensCharges(lenses: PricedLenses, pair: number): Charge[] {
  const { design, material, tint, coating, stock } = lenses;
  const designEntry = `lenses/designs/${design.id}`;
  const materialEntry = `lenses/materials/${material.id}`;
  const slots = {
    design: design.name,
    material: material.name,
    tint: tint?.name ?? '',
    coating: coating?.name ?? '',
  };
  const line = (kind: Charge['kind'], key: PriceWord, amountMinor: number, source: string): Charge => {
    return { kind, pair, label: { key, slots }, amountMinor, source };
  };
  const surcharge = (option: string, source: string, { label, priceMinor }: Surcharge): Charge => {
    const slots = { option, surcharge: label };
    return {
      kind: 'surcharge',
      pair,
      label: { key: 'price.surcharge', slots },
      amountMinor: priceMinor,
      source,
    };
  };

  const lines = stock
    ? [line('lenses', 'price.stock', stock.priceMinor, materialEntry)]
    : [
        line('lenses', 'price.design', design.priceMinor, designEntry),
        line('lenses', 'price.material', material.priceMinor, materialEntry),
      ];
  if (tint) lines.push(line('option', 'price.tint', tint.priceMinor, `lenses/tints/${tint.id}`));
  if (coating)
    lines.push(line('option', 'price.coating', coating.priceMinor, `lenses/coatings/${coating.id}`));
  if (stock) return lines;
  for (const declared of surchargesFor(lenses, design.surcharges))
    lines.push(surcharge(design.name, designEntry, declared));
  for (const declared of surchargesFor(lenses, material.surcharges))
    lines.push(surcharge(material.name, materialEntry, declared));
  return lines;
}

/** The lines of a pair at list price, frame first; see frameCharges and lensCharges. */
export function listCharges(
  { frame, lenses }: PricedPair,
  pair: number,
): { frame: Charge[]; lenses: Charge[] } {
  return {
    frame: frame ? frameCharges(frame, pair) : [],
    lenses: lenses ? lensCharges(lenses, pair) : [],
  };
}

/**
 * The sums of those lines, minor units, without writing one: what a search through thousands of packages needs. A law
 * holds it equal to listCharges.
 */
export function listSums({ frame, lenses }: PricedPair): PairGoods {
  return {
    frame: frame
      ? frame.frame.priceMinor + frame.colourway.priceDifferenceMinor + frame.size.priceDifferenceMinor
      : 0,
    lenses: lenses ? lensSum(lenses) : 0,
  };
}

function lensSum(lenses: PricedLenses): number {
  const { design, material, tint, coating, stock } = lenses;
  const options = (tint?.priceMinor ?? 0) + (coating?.priceMinor ?? 0);
  if (stock) return stock.priceMinor + options;
  let sum = design.priceMinor + material.priceMinor + options;
  for (const { priceMinor } of surchargesFor(lenses, design.surcharges)) sum += priceMinor;
  for (const { priceMinor } of surchargesFor(lenses, material.surcharges)) sum += priceMinor;
  return sum;
}
