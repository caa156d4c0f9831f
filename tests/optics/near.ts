import { expect } from 'vitest';

/** Holds a number to within `tolerance`; the unit is there for whoever reads the failure. */
export function expectNear(actual: number, expected: number, tolerance: number, unit: string): void {
  const off = Math.abs(actual - expected);
  const message = `${actual} ${unit}, expected ${expected} ${unit} within ${tolerance} ${unit}`;
  expect(Number.isFinite(actual) && off <= tolerance, message).toBe(true);
}
