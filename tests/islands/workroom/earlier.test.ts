import { expect, it } from 'vitest';
import { earlierDrafts, setAside } from '../../../src/islands/workroom/earlier.ts';

const draft = {
  '0.right.sphere': '-3',
  '0.by': 'MT',
  '0.markings': 'B',
  '1.right.sphere': '1',
  paidHow: 'card',
};

it('sets an inspection aside, and leaves everything else where it is', () => {
  expect(setAside(draft, 0)).toEqual({
    '0.earlier.0.right.sphere': '-3',
    '0.earlier.0.by': 'MT',
    '0.markings': 'B',
    '1.right.sphere': '1',
    paidHow: 'card',
  });
});

it('gives them back in their order, each pair its own', () => {
  const twice = setAside({ ...setAside(draft, 0), '0.right.sphere': '-3.25' }, 0);
  expect(earlierDrafts(twice, 0)).toEqual([{ 'right.sphere': '-3', by: 'MT' }, { 'right.sphere': '-3.25' }]);
  expect(earlierDrafts(twice, 1)).toEqual([]);
});
