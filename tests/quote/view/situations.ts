/** Situations of the bench shop for the views of its pairs. */
import fc from 'fast-check';
import type { PairAnswer } from '../../../src/quote/answer.ts';
import { judgePair } from '../../../src/quote/judgePair.ts';
import type { Situation } from '../../../src/rules/situation.ts';
import { type Change, changed, offer } from '../../fixtures/bench.ts';

/** The situation of a changed bench package and its answer. Throws with the faults of a wrong request. */
export function judged(change: Change): { readonly situation: Situation; readonly answer: PairAnswer } {
  const faults: never[] = [];
  const pair = judgePair(offer, '2026-11-25', changed(change), 'pairs[0]', faults);
  if (pair === null) throw new Error(JSON.stringify(faults));
  return pair;
}

/** The situation of a changed bench package. */
export const situationOf = (change: Change): Situation => judged(change).situation;

const quarters = (from: number, to: number) => fc.integer({ min: from * 4, max: to * 4 }).map((n) => n / 4);

const eyePower = fc.record({
  sphere: quarters(-10, 6),
  cylinder: quarters(-3, -0.25),
  axis: fc.integer({ min: 1, max: 180 }),
  add: fc.constant(2),
  prism: fc.constantFrom([], [{ amount: 2, base: 'in' as const }], [{ amount: 1.5, base: 'up' as const }]),
});

/** Any package of the bench that has all measurements: its lenses may still be refused. */
export const anyPackage: fc.Arbitrary<Change> = fc
  .record({
    frame: fc.constantFrom('ring', 'groove', 'drill'),
    size: fc.constantFrom('60-10', '50-20', '38-24'),
    right: eyePower,
    left: eyePower,
    pd: fc.integer({ min: 28, max: 36 }),
    height: fc.integer({ min: 16, max: 26 }),
    design: fc.constantFrom('single', 'long', 'flat-top'),
  })
  .map(({ frame, size, right, left, pd, height, design }) => ({
    frame,
    size,
    prescription: { right, left, vertexDistance: 12, issued: '2026-06-01' },
    fit: {
      pd: { right: pd, left: pd },
      fittingHeight: { right: height, left: height },
      segmentHeight: { right: height, left: height },
    },
    lenses: { use: design === 'single' ? 'distance' : 'all', design },
  }));

/** The same with the left eye the mirror image of the right. */
export const mirroredPackage: fc.Arbitrary<Change> = anyPackage.map((change) => {
  const right = change.prescription?.right;
  if (right === undefined) return change;
  const axis = 180 - ((right as { axis: number }).axis % 180);
  return { ...change, prescription: { ...change.prescription, right, left: { ...right, axis } } };
});
