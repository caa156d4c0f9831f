import { describe, expect, it } from 'vitest';
import { outOfLine } from '../../../src/catalogue/resolve/outOfLine.ts';
import { fitFamily, OUTLINE_FAMILIES } from '../../../src/optics/outlineFamily.ts';
import { resample } from '../../../src/optics/outlineShape.ts';
import { usualEdMm } from '../../../src/quote/ownFrame.ts';

const radii = (family: (typeof OUTLINE_FAMILIES)[number], count: number) => {
  const edMm = usualEdMm(family, { a: 52, b: 34 });
  const fit = fitFamily(family, { aMm: 52, bMm: 34, edMm });
  if (!fit.ok) throw new Error(`No ${family}.`);
  return resample(fit.outline, count).radiiMm.map((radius) => Math.round(radius * 100) / 100);
};

describe('a list of radii', () => {
  it.each(OUTLINE_FAMILIES)('is in line as %s, however many there are', (family) => {
    for (const count of [36, 72, 360, 400, 1440]) expect(outOfLine(radii(family, count))).toBeNull();
  });

  it('is not where a decimal comma made two radii of one', () => {
    const whole = radii('panto', 360);
    for (const at of [0, 90, 200]) {
      const [mm = '', parts = ''] = (whole[at] ?? 0).toFixed(2).split('.');
      const split = whole.toSpliced(at, 1, Number(mm), Math.max(5, Number(parts)));
      expect(outOfLine(split)).not.toBeNull();
    }
  });
});
