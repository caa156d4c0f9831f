import { cmfs, illuminants } from 'spectral-color';
import { describe, expect, it } from 'vitest';
import {
  DAYLIGHT_D65,
  OBSERVER_X,
  OBSERVER_Y,
  OBSERVER_Z,
  TABLE_START_NM,
  TABLE_STEP_NM,
} from '../../src/optics/observer.ts';
import { expectNear } from './near.ts';

describe('the tables of observer and daylight', () => {
  it('are the CIE 1931 observer and D65, from 380 to 780 nm by 5 nm', () => {
    expect([OBSERVER_X, OBSERVER_Y, OBSERVER_Z, DAYLIGHT_D65].map(({ length }) => length)).toEqual([
      81, 81, 81, 81,
    ]);
    for (let i = 0; i < 81; i++) {
      const nm = TABLE_START_NM + TABLE_STEP_NM * i;
      const [x, y, z] = cmfs.CIE_1931_2DEG.samples[(nm - 360) / 5] as [number, number, number];
      expectNear(OBSERVER_X[i] ?? Number.NaN, x, 1e-6, '');
      expectNear(OBSERVER_Y[i] ?? Number.NaN, y, 1e-6, '');
      expectNear(OBSERVER_Z[i] ?? Number.NaN, z, 1e-6, '');
      expectNear(DAYLIGHT_D65[i] ?? Number.NaN, illuminants.D65.samples[(nm - 300) / 5] as number, 1e-4, '');
    }
  });

  it('have the published peak: V(555 nm) = 1, and daylight of 100 at 560 nm', () => {
    // ISO/CIE 11664-1 and 11664-2.
    expect(OBSERVER_Y[(555 - 380) / 5]).toBe(1);
    expect(DAYLIGHT_D65[(560 - 380) / 5]).toBe(100);
  });
});
