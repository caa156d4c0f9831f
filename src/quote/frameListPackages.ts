/**
 * The lens packages that a list of frames looks at: designs that serve the use, in every material, with the shop's
 * plainest tint and every coating, as far as the shop declares them together. Plainest is clear, and for a sun frame
 * any tint that is one of its states a sun lens. Designs with a segment are left out: their height is measured in
 * one frame and says nothing about another.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Coating } from '../catalogue/coating.ts';
import type { Design, Use } from '../catalogue/design.ts';
import type { Material, StockBlanks } from '../catalogue/material.ts';
import type { Tint } from '../catalogue/tint.ts';
import { stockRangesFor } from './stockBlank.ts';

export interface LensPackage {
  readonly design: Design;
  readonly material: Material;
  readonly tint: Tint;
  readonly coating: Coating;
  /** What it may be cut from; null: surfaced. */
  readonly blanks: readonly (StockBlanks | null)[];
  /** Packages of one key are the same lens in the same frame, whatever their tint and coating. */
  readonly lensKey: string;
}

/** Upper edge of category 3 (College of Optometrists, quoting BS EN ISO 12312-1:2013). */
const SUN_TRANSMITTANCE = 0.18;

const isSun = ({ states }: Tint) => states.some(({ transmittance }) => transmittance <= SUN_TRANSMITTANCE);

/** The packages for a use in an ordinary or a sun frame, in the shop's order. */
export function lensPackages(offer: Omit<Offer, 'frames'>, use: Use, sun: boolean): readonly LensPackage[] {
  const tints = offer.tints.filter((tint) => (sun ? isSun(tint) : tint.kind === 'clear'));
  const designs = offer.designs.filter(({ uses, segment }) => uses.includes(use) && segment === null);
  return designs.flatMap((design) =>
    offer.materials
      .filter(({ id }) => design.materials.includes(id))
      .flatMap((material) =>
        tints
          .filter(({ materials, designs: of }) => materials.includes(material.id) && of.includes(design.id))
          .flatMap((tint) => coated(offer.coatings, design, material, tint)),
      ),
  );
}

function coated(
  coatings: readonly Coating[],
  design: Design,
  material: Material,
  tint: Tint,
): readonly LensPackage[] {
  return coatings
    .filter(({ materials, tints }) => materials.includes(material.id) && tints.includes(tint.id))
    .map((coating) => {
      const stock = stockRangesFor(design, material, tint.id, coating.id);
      const lensKey = [design.id, material.id, ...stock.map(({ id }) => id)].join(' ');
      return { design, material, tint, coating, blanks: [null, ...stock], lensKey };
    });
}
