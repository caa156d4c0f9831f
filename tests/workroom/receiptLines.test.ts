import { describe, expect, it, test } from 'vitest';
import { sumMinor } from '../../src/money/minor.ts';
import { openJob } from '../../src/workroom/openJob.ts';
import { groupTotal, RECEIPT_GROUPS, receiptLines } from '../../src/workroom/receiptLines.ts';
import { jobOfPairs, PAIRS, type PairName, shop } from './jobs.ts';

function linesOf(...names: readonly PairName[]) {
  const { answer, pairs } = openJob(jobOfPairs(...names), shop);
  if (answer === null) throw new Error('The order has a price.');
  return { total: answer.price.total, lines: receiptLines(answer.price.lines, pairs, shop.workroom.billing) };
}

const codes = (...names: readonly PairName[]) =>
  linesOf(...names).lines.flatMap(({ codes: own, label }) =>
    own.map(({ code, count }) => `${label}: ${code} x ${count}`),
  );

test.each(Object.keys(PAIRS) as PairName[])(
  '%s: the groups add up to the total, and no line is lost',
  (name) => {
    const { total, lines } = linesOf(name, 'plano');
    expect(sumMinor(RECEIPT_GROUPS.map((group) => groupTotal(lines, group)))).toBe(total);
  },
);

describe('what was prescribed', () => {
  it('stands apart from extras, and is nothing where there is no prescription', () => {
    const groups = (name: PairName) =>
      linesOf(name).lines.flatMap(({ group, label }) =>
        group === 'prescribed' || group === 'extra' ? [[group, label]] : [],
      );
    expect(groups('progressive')).toEqual([
      ['prescribed', 'Lens design: Progressive, middle corridor'],
      ['prescribed', 'Lens material: Thiourethane 1.60'],
      ['prescribed', 'Progressive, middle corridor: Prism ground into the lens'],
      ['extra', 'Tint: Photochromic, gray'],
      ['extra', 'Coating: Anti-reflective, easy to clean'],
    ]);
    expect(new Set(groups('plano').map(([group]) => group))).toEqual(new Set(['extra']));
  });
});

describe('billing codes', () => {
  it('stand on the line that they are for, once a frame and once a lens', () => {
    // from memory: public US HCPCS level II vision codes
    expect(codes('progressive')).toEqual([
      'Frame Ruff: V2020 x 1',
      'Lens design: Progressive, middle corridor: V2781 x 2',
      'Lens design: Progressive, middle corridor: V2715 x 2',
      'Lens material: Thiourethane 1.60: V2782 x 2',
      'Tint: Photochromic, gray: V2744 x 2',
      'Coating: Anti-reflective, easy to clean: V2750 x 2',
    ]);
  });

  it('are chosen lens by lens', () => {
    // Right -3.25/-0.75 is a sphero-cylinder, left -2.75 a sphere.
    const own = codes('single').filter((code) => /V210/.test(code));
    expect(own.map((code) => code.slice(-9))).toEqual(['V2100 x 1', 'V2103 x 1']);
  });
});
