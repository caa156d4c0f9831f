import { expect, it } from 'vitest';
import { choicesOf } from '../../../src/configurator/choices.ts';
import { onlyOffered } from '../../../src/configurator/keeping/offered.ts';
import { holdPair } from '../../../src/configurator/keeping/parts.ts';
import { shopData } from '../../../src/configurator/shopData.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const data = shopData(shop);

it('leaves every untouched worksheet of the shop as it is', () => {
  for (const frame of shop.frames) {
    const { entries } = holdPair(frame.id, {}, choicesOf({}, frame, data, DATE));
    expect(onlyOffered(entries, frame, data)).toEqual({ entries, notHad: [] });
  }
});

it('takes out what the shop does not have and tells each', () => {
  const entries = {
    size: '99-99',
    material: 'glass',
    'right.sphere': '-1',
    'right.prism1.base': 'sideways',
    use: 'all',
    wearer: 'cat',
  };
  const { entries: left, notHad } = onlyOffered(entries, frameOf('sanderling'), data);
  expect(left).toEqual({ 'right.sphere': '-1', use: 'all' });
  expect(notHad.map(({ field, value }) => `${field}: ${value}`).sort()).toEqual([
    'material: glass',
    'right.prism1.base: sideways',
    'size: 99-99',
    'wearer: cat',
  ]);
});
