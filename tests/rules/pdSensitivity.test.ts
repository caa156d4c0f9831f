import { expect, it } from 'vitest';
import { ANSI_Z80_1_2015 } from '../../src/optics/tolerance/ansiZ80.ts';
import { PD_TOLERANCE } from '../../src/rules/pdSensitivity.ts';

it('tells the shopper the limit by which the workroom inspects', () => {
  const { lenses } = ANSI_Z80_1_2015;
  const held = (kind: 'single-vision' | 'multifocal' | 'progressive') => {
    const { strongOverD, strongMm, strongOf } = lenses[kind]?.horizontalPrism ?? {};
    return { message: strongOf, overD: strongOverD, mm: strongMm };
  };
  expect(held('single-vision')).toEqual(PD_TOLERANCE.pair);
  expect(held('multifocal')).toEqual(PD_TOLERANCE.pair);
  expect(held('progressive')).toEqual(PD_TOLERANCE.each);
});
