// Every figure: New Jersey Administrative Code 13:35-5.2.
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/optics/tolerance/inspect.ts';
import { NEW_JERSEY } from '../../../src/optics/tolerance/newJersey.ts';
import { expectItem, lens, pair, rx } from './cases.ts';

describe('N.J.A.C. 13:35-5.2', () => {
  it.each([
    [6, 0.12],
    [-6.25, 0.125],
    [12, 0.24],
    [-12.25, 0.25],
  ])('holds a sphere of %d D to %d D', (sphere, limit) => {
    expectItem(NEW_JERSEY, 'single-vision', lens(rx(sphere)), 'power', 'pass', limit);
  });

  it('holds the sphere as ordered, not the stronger meridian', () => {
    const one = lens(rx(-5, -3, 90), rx(-5, -3.12, 90));
    expectItem(NEW_JERSEY, 'single-vision', one, 'power', 'pass', 0.12);
    const [power] = inspect(
      pair('single-vision', lens(rx(-5, -3, 90), rx(-5.05, -3.1, 90))),
      NEW_JERSEY,
    ).items;
    expect(power).toMatchObject({ ordered: -5, deviation: -0.05, band: { quantity: 'sphere', value: 5 } });
    expectItem(NEW_JERSEY, 'progressive', lens(rx(-5, -3, 90), rx(-5.13, -3, 90)), 'power', 'fail', 0.12);
  });

  it('holds every cylinder to 0.12 D', () => {
    expectItem(NEW_JERSEY, 'single-vision', lens(rx(0, -6, 90), rx(0, -6.12, 90)), 'cylinder', 'pass', 0.12);
    expectItem(NEW_JERSEY, 'single-vision', lens(rx(0, -6, 90), rx(0, -6.13, 90)), 'cylinder', 'fail', 0.12);
  });

  it.each([
    [0.12, 3],
    [0.37, 3],
    [0.5, 2],
    [1, 2],
    [1.12, 1],
    [3, 1],
  ])('holds the axis of a cylinder of %d D to %d degrees', (cylinder, limit) => {
    const order = rx(-1, -cylinder, 90);
    expectItem(NEW_JERSEY, 'multifocal', lens(order, rx(-1, -cylinder, 90 + limit)), 'axis', 'pass', limit);
    expectItem(NEW_JERSEY, 'multifocal', lens(order, rx(-1, -cylinder, 91 + limit)), 'axis', 'fail', limit);
  });

  it('holds no axis of a cylinder under 0.12 D', () => {
    const turned = lens(rx(-1, -0.11, 90), rx(-1, -0.11, 30));
    expectItem(NEW_JERSEY, 'single-vision', turned, 'axis', 'no limit held', null);
  });

  it('decides, as a text that was seen', () => {
    expect(NEW_JERSEY).toMatchObject({ id: 'njac-13-35-5.2', title: 'N.J.A.C. 13:35-5.2', note: '' });
    expect(inspect(pair('single-vision', lens(rx(-1))), NEW_JERSEY).fromMemory).toBe(false);
    expect(inspect(pair('single-vision', lens(rx(-1))), NEW_JERSEY).items[0]?.basis).toBe('text seen');
  });

  it('holds no limit on anything else', () => {
    const one = { ...lens(rx(-1)), placed: { 'centre-thickness': { ordered: 2, measured: 3 } } };
    expectItem(NEW_JERSEY, 'single-vision', one, 'centre-thickness', 'no limit held', null);
  });
});
