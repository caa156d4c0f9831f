import { describe, expect, it } from 'vitest';
import type { ToleranceChoice } from '../../../src/catalogue/workroom.ts';
import { toleranceProfile } from '../../../src/workroom/inspection/profile.ts';

const none = { powerD: null, cylinderD: null, axis: null, addD: null, placed: {} };
const choice = (change: Partial<ToleranceChoice> = {}): ToleranceChoice => ({
  standard: 'ansi-z80.1-2015',
  memoryChecked: false,
  own: none,
  ...change,
});

describe('the profile of a shop', () => {
  it('is the table itself where the shop has no limits of its own', () => {
    const profile = toleranceProfile(choice({ standard: 'njac-13-35-5.2' }), 'Bench');
    expect([profile.id, profile.basis]).toEqual(['njac-13-35-5.2', 'text seen']);
    // P NJ: cylinder 0.50 to 1.00 holds its axis to 2 degrees
    expect(profile.lenses.progressive.axis?.find(({ upTo }) => upTo === 1)?.limit).toBe(2);
  });

  it('has the limits of the shop in place of those of the table, and leaves the others', () => {
    const own = { ...none, addD: 0.1, axis: [{ upToD: 20, degrees: 1 }], placed: { 'segment-height': 0.5 } };
    const { title, basis, lenses } = toleranceProfile(choice({ own }), 'Bench');
    expect([title, basis]).toEqual(['Bench', 'shop']);
    expect(lenses.multifocal.placed['segment-height']).toEqual({ limit: 0.5, basis: 'shop' });
    // P Z80-2015: segment tilt 2 degrees, single vision power 0.13 to 6.50
    expect(lenses.multifocal.placed['segment-tilt']?.limit).toBe(2);
    expect(lenses['single-vision'].power?.bands[0]?.limit).toBe(0.13);
    expect(lenses.progressive.add?.[0]?.limit).toBe(0.1);
  });

  it('stays from memory over a table from memory', () => {
    const own = { ...none, powerD: 0.1 };
    expect(toleranceProfile(choice({ standard: 'iso-21987-2017', own }), 'Bench').basis).toBe('from memory');
  });
});
