import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toolReadingD, truePowerD } from '../../src/optics/toolIndex.ts';
import { expectNear } from './near.ts';
import { index, real } from './realistic.ts';

describe('a lens clock', () => {
  it('reads too little on a high index: 6.00 at 1.530 is 7.58 in 1.67', () => {
    // true F = reading (n - 1)/(cal - 1); 1.530 in most trade texts, from memory
    expectNear(truePowerD(6, 1.67), 7.585, 0.001, 'D');
    expectNear(truePowerD(6, 1.67, 1.523), 7.686, 0.001, 'D');
  });

  it('reads the true power in its own index', () => {
    fc.assert(
      fc.property(real(-20, 20), fc.constantFrom(1.523, 1.53), (powerD, cal) => {
        expectNear(truePowerD(powerD, cal, cal), powerD, 1e-12, 'D');
      }),
    );
  });

  it('is undone by its inverse', () => {
    fc.assert(
      fc.property(real(-20, 20), index, real(1.5, 1.55), (powerD, n, cal) => {
        expectNear(toolReadingD(truePowerD(powerD, n, cal), n, cal), powerD, 1e-9, 'D');
      }),
    );
    expect(toolReadingD(0, 1.6)).toBe(0);
  });
});
