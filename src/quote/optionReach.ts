/** What each lens option of a shop is good for, for the owner: the frames and powers with a pair that can be made. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Use } from '../catalogue/design.ts';
import type { Frame, FrameSize } from '../catalogue/frame.ts';
import type { PairRequest } from './request.ts';
import { packagesOf } from './space.ts';
import { usualFit, usualPrescription, usualTerms } from './usualRequest.ts';

export const OPTION_KINDS = ['design', 'material', 'tint', 'coating'] as const;

export interface OptionReach {
  readonly kind: (typeof OPTION_KINDS)[number];
  readonly id: string;
  /** Ids of frames that take it for one of the powers, in the shop's order. */
  readonly frames: readonly string[];
  /** Spheres that some frame takes it for, ascending, D; none for what only lenses without power have. */
  readonly spheresD: readonly number[];
}

/** Every lens option at these spheres with one cylinder; an option without frames is dead. */
export function optionReach(
  offer: Offer,
  date: string,
  spheresD: readonly number[],
  cylinderD: number,
): readonly OptionReach[] {
  const served = new Map<string, { readonly frames: Set<string>; readonly spheres: Set<number> }>();
  for (const frame of offer.frames)
    for (const size of frame.sizes)
      for (const sphereD of spheresD)
        for (const use of usesOf(offer))
          for (const key of servedBy(offer, use, date, frame, size, [sphereD, cylinderD])) {
            const found = served.get(key) ?? { frames: new Set(), spheres: new Set() };
            found.frames.add(frame.id);
            if (use !== 'none') found.spheres.add(sphereD);
            served.set(key, found);
          }
  const { designs: design, materials: material, tints: tint, coatings: coating } = offer;
  const options = { design, material, tint, coating };
  return OPTION_KINDS.flatMap((kind) =>
    options[kind].map(({ id }) => {
      const { frames, spheres } = served.get(`${kind} ${id}`) ?? { frames: [], spheres: [] };
      return { kind, id, frames: [...frames], spheresD: [...spheres].sort((one, other) => one - other) };
    }),
  );
}

/** Each design is asked for the first of its uses. */
const usesOf = ({ designs }: Offer) => new Set(designs.flatMap(({ uses }) => uses.slice(0, 1)));

/** Options of the packages that a size makes, as `kind id`. */
function servedBy(
  offer: Offer,
  use: Use,
  date: string,
  frame: Frame,
  size: FrameSize,
  [sphereD, cylinderD]: readonly [number, number],
): ReadonlySet<string> {
  const designs = offer.designs.filter(({ uses }) => uses[0] === use);
  const { id, wearer, colourways } = frame;
  const pair: PairRequest = {
    ...{ frame: id, size: size.id, colourway: colourways[0]?.code ?? '', wearer },
    prescription: use === 'none' ? null : usualPrescription(date, sphereD, cylinderD),
    fit: usualFit(frame, size, offer.shop.habits),
    lenses: anyLenses(offer, use, designs[0]?.id ?? ''),
  };
  // Prices decide nothing here, and a promotion may name a design of another use.
  const made = packagesOf(
    { ...offer, designs, promotions: [] },
    { ...usualTerms(offer, date), pairs: [pair] },
    0,
  );
  const makeable = made.filter(({ verdict }) => verdict !== 'refused');
  return new Set(makeable.flatMap((one) => OPTION_KINDS.map((kind) => `${kind} ${one[kind]}`)));
}

const anyLenses = ({ materials }: Offer, use: Use, design: string): PairRequest['lenses'] => ({
  use,
  design,
  material: materials[0]?.id ?? '',
  tint: null,
  coating: null,
});
