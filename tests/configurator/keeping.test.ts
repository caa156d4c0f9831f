import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { belongsToFrame, type Entries, FIELDS } from '../../src/configurator/fields.ts';
import { forget, KEPT_AS, keep, recall, type Shelf } from '../../src/configurator/keeping.ts';

let stored: Map<string, string>;
let shelf: Shelf;

beforeEach(() => {
  stored = new Map();
  shelf = {
    getItem: (key) => stored.get(key) ?? null,
    setItem: (key, value) => void stored.set(key, value),
    removeItem: (key) => void stored.delete(key),
  };
});

const refusing: Shelf = {
  getItem: () => {
    throw new Error('denied');
  },
  setItem: () => {
    throw new Error('full');
  },
  removeItem: () => {
    throw new Error('denied');
  },
};

const texts = fc.string({ minLength: 1, maxLength: 40 });
const anyEntries = fc
  .array(fc.tuple(fc.constantFrom(...FIELDS), texts), { maxLength: 15 })
  .map((pairs): Entries => Object.fromEntries(pairs));

describe('keeping', () => {
  it('gives back for a frame what was kept for it', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        keep(shelf, 'dunlin', entries);
        expect(recall(shelf, 'dunlin')).toEqual(entries);
      }),
    );
  });

  it('gives another frame the prescription, and nothing that was measured or chosen in this one', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        stored.clear();
        keep(shelf, 'dunlin', entries);
        const common = Object.entries(entries).filter(([field]) => !belongsToFrame(field as never));
        expect(recall(shelf, 'knot')).toEqual(Object.fromEntries(common));
      }),
    );
    keep(shelf, 'dunlin', { 'right.sphere': '-1', 'fittingHeight.right': '20', size: '49-19' });
    expect(recall(shelf, 'knot')).toEqual({ 'right.sphere': '-1' });
  });

  it('keeps the measurements of each frame apart', () => {
    keep(shelf, 'dunlin', { 'fittingHeight.right': '20' });
    keep(shelf, 'knot', { 'fittingHeight.right': '17' });
    expect(recall(shelf, 'dunlin')).toEqual({ 'fittingHeight.right': '20' });
    expect(recall(shelf, 'knot')).toEqual({ 'fittingHeight.right': '17' });
  });

  it('leaves nothing behind when it forgets', () => {
    keep(shelf, 'dunlin', { 'right.sphere': '-1' });
    forget(shelf);
    expect([...stored]).toEqual([]);
    expect(recall(shelf, 'dunlin')).toBeNull();
  });

  it('uses one key', () => {
    keep(shelf, 'dunlin', { 'right.sphere': '-1' });
    keep(shelf, 'knot', { size: '53-17' });
    expect([...stored.keys()]).toEqual([KEPT_AS]);
  });

  it.each([
    'not JSON',
    'null',
    '[]',
    '7',
    '{}',
    '{"common":{"right.sphere":7,"nonsense":"1","__proto__":{"x":1}},"frames":[]}',
    `{"common":{"right.sphere":"${'9'.repeat(5000)}"}}`,
  ])('takes no harm from what it did not write: %s', (text) => {
    stored.set(KEPT_AS, text);
    expect(recall(shelf, 'dunlin') ?? {}).toEqual({});
  });

  it('says so when the browser refuses, and does not throw', () => {
    expect(keep(refusing, 'dunlin', {})).toBe(false);
    expect(forget(refusing)).toBe(false);
    expect(recall(refusing, 'dunlin')).toBeNull();
  });
});
