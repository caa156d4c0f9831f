import { describe, expect, it } from 'vitest';
import { answerComparison } from '../../../src/configurator/basket/answerComparison.ts';
import { choicesOf } from '../../../src/configurator/choices.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { holdPair } from '../../../src/configurator/keeping/parts.ts';
import { readEntries } from '../../../src/configurator/readEntries.ts';
import { shopData } from '../../../src/configurator/shopData.ts';
import { quote } from '../../../src/quote/quote.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const data = shopData(shop);
const known = (id: string) => shop.frames.find((frame) => frame.id === id) ?? null;

const MYOPE: Entries = {
  'right.sphere': '-6.25',
  'left.sphere': '-5.75',
  'pd.right': '31.5',
  'pd.left': '32',
  vertexTested: '12',
  material: 'standard-plastic',
};

const held = (id: string, entries: Entries) =>
  holdPair(id, entries, choicesOf(entries, frameOf(id), data, DATE));

const compare = (...pairs: readonly (readonly [string, Entries])[]) =>
  answerComparison(
    pairs.map(([id, entries]) => held(id, entries)),
    { destination: 'CA' },
    known,
    data,
    DATE,
  );

describe('a comparison', () => {
  it('gives each package the figures and the price of quote() for it alone', () => {
    const pairs = [
      ['sanderling', MYOPE],
      ['sanderling', { ...MYOPE, material: 'thiourethane-1-67' }],
      ['knot', MYOPE],
    ] as const;
    const { packages, differentEyes } = compare(...pairs);
    expect(differentEyes).toBe(false);
    for (const [at, [id, entries]] of pairs.entries()) {
      const { request } = readEntries(
        { ...entries, destination: 'CA' },
        { frame: frameOf(id), data, date: DATE },
      );
      const reply = quote(shop, request);
      if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
      const [pair] = reply.answer.pairs;
      const [right, left] = [pair?.right, pair?.left];
      if (!right || !left) throw new Error('A lens is missing.');
      expect(packages[at]?.price).toEqual(reply.answer.price);
      expect(packages[at]?.standing.findings).toEqual(pair?.findings);
      expect(packages[at]?.figures).toMatchObject({
        thickestMm: Math.max(right.edgeThicknessMm.thickest.mm, left.edgeThicknessMm.thickest.mm),
        beyondRimMm: Math.max(right.beyondRimMm, left.beyondRimMm),
        centreMm: Math.max(right.centreThicknessMm, left.centreThicknessMm),
        massG: Math.round((right.massG + left.massG) * 10) / 10,
      });
    }
  });

  it('has no lens figures before there is a prescription', () => {
    const { packages } = compare(['sanderling', {}]);
    expect(packages[0]?.figures).toMatchObject({ thickestMm: null, massG: null, sharpDeg: null });
  });

  it('has no sharp-view angle for a progressive', () => {
    const entries = {
      ...MYOPE,
      use: 'all',
      design: 'progressive-short',
      'right.add': '2.00',
      'left.add': '2.00',
      'fittingHeight.right': '22',
      'fittingHeight.left': '22',
    };
    const { packages } = compare(['sanderling', entries]);
    expect(packages[0]?.figures.thickestMm).toBeGreaterThan(0);
    expect(packages[0]?.figures.sharpDeg).toBeNull();
  });

  it('reflects less with a coating, and lets more through', () => {
    const { packages } = compare(
      ['sanderling', { ...MYOPE, coating: 'none' }],
      ['sanderling', { ...MYOPE, coating: 'anti-reflective' }],
    );
    const [bare, coated] = packages.map((one) => one?.figures);
    // Normal incidence on n = 1.50: 4.0 % a face, 8.0 % both (Fresnel).
    expect(bare?.reflectedPercent).toBeCloseTo(8, 1);
    expect(coated?.reflectedPercent).toBeLessThan(bare?.reflectedPercent ?? 0);
    expect(coated?.lightPercents[0]).toBeGreaterThan(bare?.lightPercents[0] ?? 100);
  });

  it('says when packages were set aside for different eyes, and not for other measures of another frame', () => {
    const other = { ...MYOPE, 'right.sphere': '-1.00' };
    expect(compare(['sanderling', MYOPE], ['sanderling', other]).differentEyes).toBe(true);
    const measured = { ...MYOPE, 'fittingHeight.right': '20', 'fittingHeight.left': '20' };
    expect(compare(['sanderling', MYOPE], ['knot', measured]).differentEyes).toBe(false);
  });

  it('tells of a frame that is gone', () => {
    const pair = { frame: 'dodo', entries: {} };
    expect(answerComparison([pair], {}, known, data, DATE).packages).toEqual([null]);
  });
});
