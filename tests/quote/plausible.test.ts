import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eyeFaults, fitFaults, pairFaults } from '../../src/quote/plausible.ts';
import { changed } from '../fixtures/bench.ts';

const line = ({ path, message, expected, found }: ReturnType<typeof eyeFaults>[number]) =>
  `${path}: ${message} Expected ${expected}; found ${found}.`;

describe('an entry of one eye', () => {
  it.each([
    [{ sphere: -2, cylinder: -0.75, axis: 180 }],
    [{ sphere: 0, cylinder: 1.125, axis: 0 }],
    [
      {
        sphere: 1,
        add: 2.25,
        prism: [
          { amount: 1.5, base: 'in' as const },
          { amount: 2, base: 270 },
        ],
      },
    ],
    [{ balance: true }],
    [{}],
  ])('is let through: %j', (eye) => {
    expect(eyeFaults(eye, 'right')).toEqual([]);
  });

  it('says what is expected where it is wrong', () => {
    const wrong = [
      { sphere: -2.1 },
      { sphere: -2, axis: 90 },
      { sphere: -2, cylinder: -1 },
      { sphere: -2, cylinder: -1, axis: 181 },
      { sphere: -2, cylinder: -1, axis: 12.5 },
      { cylinder: -1, axis: 90 },
      { sphere: 325 },
      { sphere: 1, add: 22.5 },
      { sphere: 1, prism: [{ amount: 40, base: 'up' as const }] },
      { sphere: 1, prism: [{ amount: 4, base: 400 }] },
    ];
    expect(wrong.flatMap((eye) => eyeFaults(eye, 'right').map(line)).join('\n')).toMatchInlineSnapshot(`
      "right.sphere: The sphere is written in quarter or eighth steps. Expected a multiple of 0.25 or 0.125 D, such as -2.00; found -2.1.
      right.axis: An axis stands without a cylinder. Expected a cylinder beside it, or no axis; found 90.
      right.axis: A cylinder needs its axis. Expected 1 to 180 degrees; found nothing.
      right.axis: The axis is out of range. Expected 1 to 180 (0 is written 180); found 181.
      right.axis: The axis is a whole number of degrees. Expected 1 to 180 (0 is written 180); found 12.5.
      right.sphere: A cylinder stands without a sphere. Expected the sphere, 0 where the prescription says plano; found nothing.
      right.sphere: The sphere is out of range. Expected -30 to 30 D; found 325.
      right.add: The add is out of range. Expected 0.25 to 4 D; found 22.5.
      right.prism.0.amount: The prism is out of range. Expected 0 to 20 prism dioptres; found 40.
      right.prism.0.base: The base direction is out of range. Expected in, out, up, down, or 0 to 360 degrees; found 400."
    `);
  });

  it('has no fault for any prescription of the realistic range', () => {
    const eighths = (from: number, to: number) =>
      fc.integer({ min: from * 8, max: to * 8 }).map((n) => n / 8);
    fc.assert(
      fc.property(
        eighths(-20, 20),
        eighths(-6, 6),
        fc.integer({ min: 1, max: 180 }),
        eighths(0.75, 3.5),
        (sphere, cylinder, axis, add) => {
          const eye = cylinder === 0 ? { sphere, add } : { sphere, cylinder, axis, add };
          expect(eyeFaults(eye, 'right')).toEqual([]);
        },
      ),
    );
  });
});

describe('a measurement', () => {
  it('asks whether a decimal point slipped', () => {
    expect(
      [...fitFaults({ pd: 6.2 }, 'fit'), ...fitFaults({ pd: { right: 315, left: 31 } }, 'fit')].map(line),
    ).toMatchInlineSnapshot(`
      [
        "fit.pd: The distance between the pupils is out of range. Expected 40 to 85 mm (did you mean 62?); found 6.2.",
        "fit.pd.right: The distance from the middle to the pupil is out of range. Expected 20 to 43 mm (did you mean 31.5?); found 315.",
      ]
    `);
  });

  it('is let through over the published range of adult PDs', () => {
    // Dodgson 2004: nearly all adults lie from 45 to 80 mm.
    fc.assert(
      fc.property(fc.double({ min: 45, max: 80, noNaN: true }), (pd) => {
        expect(fitFaults({ pd }, 'fit')).toEqual([]);
        expect(fitFaults({ pd: { right: pd / 2, left: pd / 2 } }, 'fit')).toEqual([]);
      }),
    );
  });
});

describe('a pair', () => {
  it('names the place of every fault', () => {
    const pair = changed({
      frame: { a: 500, b: 40, dbl: 18, mounting: 'full' },
      prescription: { right: { sphere: -2.3 }, left: { sphere: 99 }, vertexDistance: 120 },
      fit: { pd: 63, fittingHeight: { right: 2, left: 20 }, pantoscopicTilt: 80 },
    });
    expect(pairFaults(pair, 'pairs.0').map(({ path }) => path)).toEqual([
      'pairs.0.prescription.right.sphere',
      'pairs.0.prescription.left.sphere',
      'pairs.0.prescription.vertexDistance',
      'pairs.0.fit.fittingHeight.right',
      'pairs.0.fit.pantoscopicTilt',
      'pairs.0.frame.a',
    ]);
  });
});
