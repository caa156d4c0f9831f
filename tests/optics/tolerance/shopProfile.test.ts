import { describe, expect, it } from 'vitest';
import { ANSI_Z80_1_2015 } from '../../../src/optics/tolerance/ansiZ80.ts';
import { inspect } from '../../../src/optics/tolerance/inspect.ts';
import { iso21987 } from '../../../src/optics/tolerance/iso21987.ts';
import { NEW_JERSEY } from '../../../src/optics/tolerance/newJersey.ts';
import { shopProfile } from '../../../src/optics/tolerance/shopProfile.ts';
import { expectItem, lens, pair, rx } from './cases.ts';

const tight = shopProfile('Own profile', ANSI_Z80_1_2015, {
  'single-vision': {
    cylinder: [{ strongestUpToD: Infinity, bands: [{ upTo: Infinity, limit: 0.09, unit: 'D' }] }],
    placed: { 'centre-thickness': { limit: 0.2 } },
    verticalPrism: null,
  },
});

describe("a shop's own profile", () => {
  it('replaces what the shop changes and keeps the rest of its base', () => {
    expectItem(tight, 'single-vision', lens(rx(-1, -1, 90), rx(-1, -1.1, 90)), 'cylinder', 'fail', 0.09);
    expectItem(tight, 'single-vision', lens(rx(-1), rx(-1.13)), 'power', 'pass', 0.13);
    expectItem(tight, 'progressive', lens(rx(-1, -1, 90), rx(-1, -1.16, 90)), 'cylinder', 'pass', 0.16);
    const placed = {
      'centre-thickness': { ordered: 2, measured: 2.3 },
      'base-curve': { ordered: 4, measured: 4.7 },
    };
    expectItem(tight, 'single-vision', { ...lens(rx(-1)), placed }, 'centre-thickness', 'fail', 0.2);
    expectItem(tight, 'single-vision', { ...lens(rx(-1)), placed }, 'base-curve', 'pass', 0.75);
  });

  it('can give up a limit', () => {
    const { items } = inspect(pair('single-vision', lens(rx(-1))), tight);
    expect(items.find(({ item }) => item === 'vertical-prism')?.outcome).toBe('no limit held');
  });

  it('is the shop’s own over a text that was seen, and stays from memory over one that was not', () => {
    expect(tight).toMatchObject({ basis: 'shop', title: 'Own profile' });
    expect(tight.id).toBe('shop-ansi-z80.1-2015');
    expect(tight.note).toBe(
      'Based on ANSI Z80.1-2015. Dress eyewear, not safety eyewear. The 2020 edition exists; its text was not seen.',
    );
    expect(shopProfile('Own', NEW_JERSEY, {}).note).toBe('Based on N.J.A.C. 13:35-5.2.');
    expect(shopProfile('Own', iso21987(), {})).toMatchObject({ basis: 'from memory' });
    expect(
      inspect(pair('single-vision', lens(rx(-1))), shopProfile('Own', iso21987(), {})).passed,
    ).toBeNull();
  });
});
