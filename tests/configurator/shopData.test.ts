import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { shopData } from '../../src/configurator/shopData.ts';
import { shop } from './shop.ts';

it('sends no story and no words of other pages to the browser', () => {
  const text = JSON.stringify(shopData(shop));
  for (const { story } of [...shop.designs, ...shop.materials, ...shop.promotions])
    expect(text).not.toContain(JSON.stringify(story).slice(1, 60));
  expect(text).not.toContain('"page.');
});

it('stays within the promise of 25 kB, gzipped', () => {
  expect(gzipSync(JSON.stringify(shopData(shop))).length).toBeLessThanOrEqual(25_000);
});
