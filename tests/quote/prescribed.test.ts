import { describe, expect, it } from 'vitest';
import type { Use } from '../../src/catalogue/design.ts';
import { orderedPower, readEye } from '../../src/quote/prescribed.ts';
import { design, offer } from '../fixtures/bench.ts';

const { habits } = offer.shop;
const none = readEye('left', {});

describe('the ordered power', () => {
  it.each<[Use, number]>([
    ['distance', -1],
    // The whole add for reading, half of it for a screen (common practice).
    ['near', 1.25],
    ['intermediate', 0.125],
  ])('of a lens for %s takes its share of the add', (use, sphereD) => {
    const eye = readEye('right', { sphere: -1, add: 2.25 });
    expect(orderedPower(eye, none, use, design, habits)).toEqual({
      power: { sphereD, cylinderD: 0, axisDeg: 180 },
      addD: 0,
    });
  });

  it('is written with a minus cylinder', () => {
    // +2.00/-2.00x060 = plano/+2.00x150 (study cards, recomputed).
    const eye = readEye('right', { sphere: 0, cylinder: 2, axis: 150 });
    expect(orderedPower(eye, none, 'distance', design, habits).power).toEqual({
      sphereD: 2,
      cylinderD: -2,
      axisDeg: 60,
    });
  });

  it('of a balance lens is the other eye at its spherical equivalent, to a quarter', () => {
    const balance = readEye('left', { balance: true });
    const other = readEye('right', { sphere: -4, cylinder: -1.25, axis: 20 });
    expect(orderedPower(balance, other, 'distance', design, habits).power?.sphereD).toBe(-4.5);
  });

  it('of a balance lens is the same whatever is written for its own eye', () => {
    const balance = readEye('left', { balance: true, sphere: 0, prism: [{ amount: 2, base: 'in' }] });
    const other = readEye('right', { sphere: -6 });
    expect(balance).toMatchObject({ sphereD: null, prism: { x: 0, y: 0 }, leftOut: true });
    expect(orderedPower(balance, other, 'distance', design, habits).power?.sphereD).toBe(-6);
    expect(readEye('left', { balance: true }).leftOut).toBe(false);
  });

  it('is not known without a sphere, and nothing without a use', () => {
    expect(orderedPower(none, none, 'distance', design, habits).power).toBeNull();
    expect(orderedPower(none, none, 'none', design, habits).power?.sphereD).toBe(0);
  });

  it('of a progressive keeps the distance power and carries the add', () => {
    const progressive = offer.designs.find(({ kind }) => kind === 'progressive');
    if (!progressive) throw new Error('The bench has a progressive.');
    const eye = readEye('right', { sphere: -1, add: 2.25 });
    expect(orderedPower(eye, none, 'all', progressive, habits)).toMatchObject({
      power: { sphereD: -1 },
      addD: 2.25,
    });
  });
});

describe('a prescription', () => {
  it('reads axis 0 as 180 and no axis without a cylinder', () => {
    expect(readEye('right', { sphere: 1, cylinder: -1, axis: 0 }).axisDeg).toBe(180);
    expect(readEye('right', { sphere: 1 }).axisDeg).toBe(180);
  });

  it('adds prisms as vectors, base in towards the nose of either eye', () => {
    const prism = [
      { amount: 2, base: 'in' as const },
      { amount: 1.5, base: 'up' as const },
    ];
    expect(readEye('right', { prism }).prism).toEqual({ x: 2, y: 1.5 });
    expect(readEye('left', { prism }).prism).toEqual({ x: -2, y: 1.5 });
  });
});
