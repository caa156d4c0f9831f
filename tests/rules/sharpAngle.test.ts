import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sharpTo } from '../../src/rules/sharpAngle.ts';
import { situationOf } from '../quote/view/situations.ts';

const quarters = fc.integer({ min: -44, max: 28 }).map((n) => n / 4);

it('is sharp straight ahead wherever the lens is worn, since its power is made for that place', () => {
  fc.assert(
    fc.property(
      quarters,
      quarters.filter((n) => n <= 0 && n >= -2),
      fc.integer({ min: 8, max: 18 }),
      (sphere, cylinder, worn) => {
        const eye = { sphere, ...(cylinder === 0 ? {} : { cylinder, axis: 180 }) };
        const prescription = { right: eye, left: eye, vertexDistance: 12, issued: '2026-06-01' };
        const situation = situationOf({ prescription, fit: { vertexDistance: worn } });
        expect(sharpTo(situation, 1)).not.toBe(false);
      },
    ),
    { numRuns: 60 },
  );
});
