import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exactPower } from '../../../src/configurator/entry/exactPower.ts';
import { otherForm } from '../../../src/configurator/entry/otherForm.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { readEntries } from '../../../src/configurator/readEntries.ts';
import { quote } from '../../../src/quote/quote.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const eighth = (most: number) => fc.integer({ min: -most * 8, max: most * 8 }).map((eighths) => eighths / 8);

const cylinder = eighth(6).filter((valueD) => valueD !== 0);

it('comes back exactly when it is turned twice, in whole and eighth steps', () => {
  fc.assert(
    fc.property(eighth(20), cylinder, fc.integer({ min: 1, max: 180 }), (sphereD, cylinderD, axisDeg) => {
      const written: Entries = {
        'right.sphere': exactPower(sphereD),
        'right.cylinder': exactPower(cylinderD),
        'right.axis': String(axisDeg),
      };
      const once = otherForm(written);
      expect(once.to).toBe(cylinderD < 0 ? 'plus' : 'minus');
      expect(otherForm(once.entries).entries).toEqual(written);
    }),
  );
});

it('writes -2.25 -0.75 x 170 as -3.00 +0.75 x 80', () => {
  // Worked by hand: S + C, -C, axis turned by 90 degrees.
  expect(otherForm({ 'left.sphere': '-2,25', 'left.cylinder': '-0.75', 'left.axis': '170' }).entries).toEqual(
    {
      'left.sphere': '\u22123.00',
      'left.cylinder': '+0.75',
      'left.axis': '80',
    },
  );
});

it('brings both eyes into one form where they differ', () => {
  const { to, entries } = otherForm({
    'right.sphere': '-1.00',
    'right.cylinder': '-0.50',
    'right.axis': '90',
    'left.sphere': '-1.00',
    'left.cylinder': '+0.50',
    'left.axis': '90',
  });
  expect(to).toBe('plus');
  expect(Object.keys(entries)).toEqual(['right.sphere', 'right.cylinder', 'right.axis']);
});

it('leaves an eye that cannot be read, and says which', () => {
  const { to, entries, unread } = otherForm({ 'right.sphere': '-1.00', 'right.cylinder': '-0.50' });
  expect({ to, entries, unread }).toEqual({ to: null, entries: {}, unread: ['right'] });
  expect(otherForm({ 'right.sphere': '1.00', 'right.cylinder': '-0.50', 'right.axis': '5' }).unread).toEqual([
    'right',
  ]);
});

it('orders the same lenses in either form', () => {
  const entries: Entries = {
    'right.sphere': '\u22122.25',
    'right.cylinder': '\u22120.75',
    'right.axis': '170',
    'left.sphere': '+1.00',
    'left.cylinder': '\u22121.25',
    'left.axis': '35',
    'pd.right': '31',
    'pd.left': '32',
  };
  const on = { frame: frameOf('sanderling'), data: shop, date: DATE };
  const answer = (now: Entries) => quote(shop, readEntries(now, on).request);
  expect(answer({ ...entries, ...otherForm(entries).entries })).toEqual(answer(entries));
});
