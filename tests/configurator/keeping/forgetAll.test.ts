import { expect, it } from 'vitest';
import { BASKET, NO_BASKET } from '../../../src/configurator/basket/basket.ts';
import { forgetAll } from '../../../src/configurator/keeping/forgetAll.ts';
import { ORDER_KEY } from '../../../src/configurator/keeping/heldKeys.ts';
import { hold } from '../../../src/configurator/keeping/holding.ts';
import { ASIDE } from '../../../src/configurator/keeping/setAside.ts';
import { keep } from '../../../src/configurator/keeping.ts';
import { emptyShelves, refusing } from './shelf.ts';

it.each([false, true])('leaves nothing in the tab or on the device (pairs kept: %s)', (onDevice) => {
  const shelves = emptyShelves();
  keep(shelves.device, 'dunlin', { 'right.sphere': '-1' });
  hold(shelves, ASIDE, [], onDevice);
  hold(shelves, BASKET, NO_BASKET, !onDevice);
  shelves.tab.setItem(ORDER_KEY, '{}');
  expect(forgetAll(shelves)).toBe(true);
  expect([...shelves.tab.stored, ...shelves.device.stored]).toEqual([]);
});

it('says so when a store refuses', () => {
  expect(forgetAll({ tab: refusing, device: refusing })).toBe(false);
});
