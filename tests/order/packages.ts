/** Requests by chance from what the demonstration shop sells: some can be made, some are refused, all can be read. */
import fc from 'fast-check';
import type { EyeRequest, PairRequest, PrismRequest, QuoteRequest } from '../../src/quote/request.ts';
import { shop } from './orders.ts';

const from = <T>(list: readonly T[]) => fc.constantFrom(...list);
const steps = (least: number, most: number, step: number) =>
  fc.integer({ min: least / step, max: most / step }).map((count) => count * step);
const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((count) => count / 10);
const both = (one: fc.Arbitrary<number>) => fc.record({ right: one, left: one });

const prisms: fc.Arbitrary<PrismRequest[]> = fc.array(
  fc.record({ amount: steps(0.25, 4, 0.25), base: from(['in', 'out', 'up', 'down', 200] as const) }),
  { maxLength: 2 },
);

const cylinders = fc.oneof(
  { weight: 1, arbitrary: fc.constant({}) },
  {
    weight: 3,
    arbitrary: fc.record({
      cylinder: steps(-4, 4, 0.25).filter((power) => power !== 0),
      axis: fc.integer({ min: 1, max: 180 }),
    }),
  },
);

function eyes(addD: number | null): fc.Arbitrary<EyeRequest> {
  const add = addD === null ? {} : { add: addD };
  return fc.tuple(steps(-9, 7, 0.25), cylinders, prisms).map(([sphere, cylinder, prism]) => ({
    sphere,
    ...cylinder,
    ...(prism.length ? { prism } : {}),
    ...add,
  }));
}

const framed = from(shop.frames).chain((frame) =>
  fc.record({
    frame: fc.constant(frame.id),
    size: from(frame.sizes).map(({ id }) => id),
    colourway: from(frame.colourways).map(({ code }) => code),
  }),
);

const lenses = from(shop.designs).chain((design) =>
  fc.record({
    use: from(design.uses),
    design: fc.constant(design.id),
    material: from(design.materials),
    tint: fc.option(from(shop.tints.map(({ id }) => id)), { freq: 2 }),
    coating: fc.option(from(shop.coatings.map(({ id }) => id)), { freq: 4 }),
  }),
);

const pairs: fc.Arbitrary<PairRequest> = fc
  .record({
    framed,
    lenses,
    add: steps(1, 3, 0.25),
    wearer: from(['adult', 'adult', 'child', 'one-eyed'] as const),
    fit: fc.record({
      pd: both(tenths(27, 35)),
      fittingHeight: both(tenths(14, 26)),
      segmentHeight: both(tenths(12, 20)),
    }),
  })
  .chain(({ framed: frame, lenses: chosen, add, ...rest }) => {
    const addD = chosen.use === 'distance' || chosen.use === 'none' ? null : add;
    const prescription =
      chosen.use === 'none'
        ? fc.constant(null)
        : fc.record({ right: eyes(addD), left: eyes(addD), issued: fc.constant('2026-06-01') });
    return prescription.map((written) => ({ ...frame, ...rest, lenses: chosen, prescription: written }));
  });

/** Orders of one or two pairs to the places that the shop sends to. */
export const requests: fc.Arbitrary<QuoteRequest> = fc.record({
  date: from(['2026-11-25', '2026-03-01']),
  destination: from(['US-ME', 'US', 'CA']),
  codes: from([[], ['FIRSTPAIR'], ['NOSUCHCODE']]),
  pairs: fc.array(pairs, { minLength: 1, maxLength: 2 }),
});
