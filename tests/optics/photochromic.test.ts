import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lightSpan, lightSpanAt, STANDARD_TEMPERATURE_C } from '../../src/optics/photochromic.ts';
import { real } from './realistic.ts';

const states = [
  { transmittance: 0.88, temperatureC: 23 },
  { transmittance: 0.15, temperatureC: 23 },
  { transmittance: 0.07, temperatureC: 5 },
  { transmittance: 0.4, temperatureC: 35 },
];

describe('a photochromic lens', () => {
  it('spans its declared states, with the category of each end', () => {
    expect(lightSpan(states)).toEqual({
      lightest: states[0],
      darkest: states[2],
      lightestCategory: 0,
      darkestCategory: 4,
    });
  });

  it('is known only at temperatures that were declared', () => {
    // Stated at 23 °C with further states at 5 and 35 °C: from memory, ISO 8980-3.
    expect(STANDARD_TEMPERATURE_C).toBe(23);
    expect(lightSpanAt(states, 23)).toMatchObject({ lightestCategory: 0, darkestCategory: 3 });
    expect(lightSpanAt(states, 35)?.darkest).toBe(states[3]);
    expect(lightSpanAt(states, 20)).toBeNull();
    expect(lightSpan([])).toBeNull();
  });

  it('is never darker than its darkest state nor lighter than its lightest, in any order', () => {
    const state = fc.record({ transmittance: real(0.04, 1), temperatureC: fc.constantFrom(5, 23, 35, null) });
    fc.assert(
      fc.property(fc.array(state, { minLength: 1 }), (declared) => {
        const span = lightSpan(declared);
        for (const { transmittance } of declared) {
          expect(span?.darkest.transmittance).toBeLessThanOrEqual(transmittance);
          expect(span?.lightest.transmittance).toBeGreaterThanOrEqual(transmittance);
        }
      }),
    );
  });
});
