import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Workroom } from '../../../src/catalogue/workroom.ts';
import { transpose } from '../../../src/optics/prescription.ts';
import type { PairRequest } from '../../../src/quote/request.ts';
import { inspectPair } from '../../../src/workroom/inspection/inspectPair.ts';
import type { MeasuredLens, MeasuredPair } from '../../../src/workroom/inspection/measured.ts';
import { perfectPair } from '../../../src/workroom/inspection/perfect.ts';
import { judgedOf, PAIRS, type PairName, shop } from '../jobs.ts';

interface Off {
  readonly right?: Partial<MeasuredLens>;
  readonly left?: Partial<MeasuredLens>;
  readonly pair?: Partial<MeasuredPair>;
  readonly workroom?: Partial<Workroom>;
}

/** A pair as ordered but for some measurements, all of the alignment in order. */
function inspected(request: PairRequest, { right = {}, left = {}, pair = {}, workroom = {} }: Off = {}) {
  const judged = judgedOf(request);
  const perfect = perfectPair(judged);
  if (perfect === null) throw new Error('This pair of the shop can be cut.');
  const measured: MeasuredPair = {
    ...perfect,
    by: 'R. Tamsin',
    on: '2026-12-02',
    alignment: shop.workroom.alignment.map(() => true),
    ...pair,
    right: { ...perfect.right, ...right },
    left: { ...perfect.left, ...left },
  };
  const found = inspectPair(judged, measured, { ...shop, workroom: { ...shop.workroom, ...workroom } });
  if (found === null) throw new Error('This pair of the shop can be inspected.');
  return found;
}

const ansi = {
  tolerance: {
    ...shop.workroom.tolerance,
    own: { powerD: null, cylinderD: null, axis: null, addD: null, placed: {} },
  },
};
const failing = ({ cures }: ReturnType<typeof inspected>) =>
  cures.map(({ item, cure }) => [item.item, item.eye, cure]);

test.each(Object.keys(PAIRS) as PairName[])(
  '%s: a pair that is as ordered passes, with nothing to cure',
  (name) => {
    const found = inspected(PAIRS[name]);
    expect(found.cures).toEqual([]);
    expect(found.passed).toBe(true);
  },
);

describe('what is entered', () => {
  it('is judged alike in plus and in minus form', () => {
    const power = fc.record({
      sphereD: fc.double({ min: -4, max: 0, noNaN: true }),
      cylinderD: fc.double({ min: -1.2, max: -0.3, noNaN: true }),
      axisDeg: fc.integer({ min: 1, max: 180 }),
    });
    fc.assert(
      fc.property(power, (minus) => {
        const rows = (right: MeasuredLens['power']) =>
          inspected(PAIRS.single, { right: { power: right } }).inspection.items.map(({ item, outcome }) => [
            item,
            outcome,
          ]);
        expect(rows(transpose(minus))).toEqual(rows(minus));
      }),
      { numRuns: 30 },
    );
  });

  it('holds thinning prism apart: equal amounts cancel between the eyes, whatever was ground', () => {
    const perfect = perfectPair(judgedOf(PAIRS.progressive));
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3, noNaN: true }), (amount) => {
        const lens = (eye: 'right' | 'left') => ({ prism: { x: perfect?.[eye].prism?.x ?? 0, y: -amount } });
        const off = { right: lens('right'), left: lens('left') };
        const entered = { pair: { thinningPrism: { right: amount, left: amount } } };
        const vertical = ({ inspection }: ReturnType<typeof inspected>) =>
          inspection.items.find(({ item }) => item === 'vertical-prism')?.deviation;
        expect(vertical(inspected(PAIRS.progressive, off))).toBe(0);
        expect(vertical(inspected(PAIRS.progressive, { ...off, ...entered }))).toBe(0);
      }),
      { numRuns: 20 },
    );
  });

  it('is held against the verification powers of the supplier where there are any', () => {
    const power = { sphereD: -1.37, cylinderD: -1.12, axisDeg: 93 };
    const right = { power, addD: 1.88 };
    expect(inspected(PAIRS.progressive, { right }).passed).toBe(true);
    const far = { power: { ...power, sphereD: -1.2 }, addD: 1.7 };
    expect(inspected(PAIRS.progressive, { right: far }).passed).toBe(false);
    const verification = { right: { ...far, prism: null } };
    expect(inspected(PAIRS.progressive, { right: far, pair: { verification } }).passed).toBe(true);
  });

  it('gives the prism of a centre that was found elsewhere', () => {
    // C: 1 mm off on 2.75 D is 0.275 prism dioptres; left lens -2.75, 3 mm too far out.
    const { pdMm = 0 } = perfectPair(judgedOf(PAIRS.single))?.left ?? {};
    const weak = {
      ...PAIRS.single,
      prescription: { ...PAIRS.single.prescription, right: { sphere: -2 }, left: { sphere: -2 } },
    };
    const judged = judgedOf(weak);
    const perfect = perfectPair(judged);
    if (perfect === null) throw new Error('This pair of the shop can be cut.');
    const { prism: _, ...right } = perfect.right;
    const { prism: __, ...left } = { ...perfect.left, pdMm: pdMm + 4 };
    const measured = { ...perfect, right, left, alignment: shop.workroom.alignment.map(() => true) };
    const item = inspectPair(judged, measured, shop)?.inspection.items.find(
      ({ item }) => item === 'horizontal-prism',
    );
    // -2.00 moved 4 mm outwards: 0.8 base out.
    expect(item?.deviation).toBeCloseTo(0.8, 2);
    expect(item?.outcome).toBe('fail');
  });
});

describe('a pair that is off', () => {
  it('names the decisive item, and what brings it in', () => {
    // P Z80-2015: cylinder over 0.50 to 0.75 holds its axis to 5 degrees.
    const power = { sphereD: -3.25, cylinderD: -0.75, axisDeg: 162 };
    const found = inspected(PAIRS.single, { right: { power } });
    expect(found.passed).toBe(false);
    expect(found.inspection.decisive?.item).toBe('axis');
    expect(found.cures.map(({ item, cure, by }) => [item.item, cure, by])).toEqual([['axis', 'recut', 3]]);
  });

  it('is ordered again for its power, cut again for its place', () => {
    const right = { addD: 2.4 };
    const left = { heightMm: 25 };
    expect(failing(inspected(PAIRS.progressive, { right, left, workroom: ansi }))).toEqual([
      ['add', 'right', 'reorder'],
      ['fitting-cross-height', 'left', 'recut'],
      ['fitting-cross-height-difference', 'both', 'recut'],
    ]);
  });

  it.each([-3.25, -1.5])(
    'fails for a prism that was ground wrong below marks that are right (%s D)',
    (sphere) => {
      const eye = { sphere, cylinder: -1.5, axis: 35, add: 2 };
      const prescription = {
        ...PAIRS.progressive.prescription,
        right: { ...eye, prism: [{ amount: 2, base: 'in' as const }] },
        left: eye,
      };
      const request = { ...PAIRS.progressive, prescription };
      expect(inspected(request).passed).toBe(true);
      const found = inspected(request, { right: { prism: { x: -3, y: 2 } } });
      expect(found.passed).toBe(false);
      expect(found.cures.map(({ item }) => item.item)).toContainEqual(expect.stringMatching(/^horizontal-/));
    },
  );

  it.each(['pdMm', 'heightMm', 'prism'] as const)(
    'is not decided for a progressive without its %s',
    (left) => {
      const judged = judgedOf(PAIRS.progressive);
      const perfect = perfectPair(judged);
      if (perfect === null) throw new Error('This pair of the shop can be cut.');
      const { [left]: _, ...right } = perfect.right;
      const alignment = shop.workroom.alignment.map(() => true);
      expect(inspectPair(judged, { ...perfect, right, alignment }, shop)?.passed).toBeNull();
    },
  );

  it('does not pass while a line of the alignment list does not hold', () => {
    const alignment = shop.workroom.alignment.map((_, at) => at !== 1);
    const found = inspected(PAIRS.single, { pair: { alignment } });
    expect([found.passed, found.misaligned]).toEqual([false, [2]]);
  });

  it('stays open while something that was ordered is not measured', () => {
    const judged = judgedOf(PAIRS.progressive);
    const perfect = perfectPair(judged);
    if (perfect === null) throw new Error('This pair of the shop can be cut.');
    const { addD: _, ...right } = perfect.right;
    const alignment = shop.workroom.alignment.map(() => true);
    const found = inspectPair(judged, { ...perfect, right, alignment }, shop);
    expect(found?.passed).toBeNull();
    expect(found?.cures.map(({ item, cure }) => [item.item, cure])).toEqual([['add', 'measure']]);
  });
});

describe('figures from memory', () => {
  const off = { right: { heightMm: 23.5 }, left: { heightMm: 23.5 } };

  it('never fail a pair by themselves', () => {
    const found = inspected(PAIRS.progressive, { ...off, workroom: ansi });
    expect(
      found.inspection.items.filter(({ outcome }) => outcome === 'fail').map(({ basis }) => basis),
    ).toEqual(['from memory', 'from memory']);
    expect(found.passed).toBeNull();
    expect(found.inspection.fromMemory).toBe(true);
  });

  it('decide once the owner has checked them', () => {
    const tolerance = { ...ansi.tolerance, memoryChecked: true };
    expect(inspected(PAIRS.progressive, { ...off, workroom: { tolerance } }).passed).toBe(false);
  });

  it('leave a pair open by a table that is from memory as a whole', () => {
    const tolerance = { ...ansi.tolerance, standard: 'iso-21987-2017' as const };
    expect(inspected(PAIRS.single, { workroom: { tolerance } }).passed).toBeNull();
  });
});
