import { describe, expect, it } from 'vitest';
import type { Frame, ListedFrame } from '../../../src/catalogue/frame.ts';
import { BOX_AS_BEGUN, MASS_AS_BEGUN_G, rimAsBegun } from '../../../src/catalogue/frameAsBegun.ts';
import { completenessOf } from '../../../src/pages/_preview/completeness.ts';
import { offer } from '../../fixtures/bench.ts';

const frame: ListedFrame = {
  ...(offer.frames[0] as Frame),
  ...{ formerIds: [], added: null, changed: null, pictures: [] },
};

describe('how complete a frame is', () => {
  it('names the sizes whose outline is an estimate', () => {
    const sizes = (['traced', 'fitted'] as const).map((origin, at) => ({
      ...(frame.sizes[0] as Frame['sizes'][number]),
      id: `size-${at}`,
      outline: { origin, family: null, radiiMm: [] },
    }));
    expect(completenessOf({ ...frame, sizes }).estimated).toEqual(['size-1']);
  });

  it('misses what is as a new frame began, and takes what was measured', () => {
    const begun = {
      ...frame,
      ...rimAsBegun('full'),
      mounting: { kind: 'full' as const },
      massG: MASS_AS_BEGUN_G,
      inTheBox: BOX_AS_BEGUN,
      sizes: [],
    };
    expect(completenessOf(begun).unmeasured).toEqual(['rim', 'mass', 'contents']);
    const measured = { ...begun, faceFormDeg: 6, massG: 20.5, inTheBox: ['Case'] };
    expect(completenessOf(measured).unmeasured).toEqual([]);
  });

  it('misses an empty box, a blank story, and a frame of which nothing can be had', () => {
    const colourways = frame.colourways.map((colourway) => ({ ...colourway, stock: 'sold-out' as const }));
    const bare = completenessOf({ ...frame, inTheBox: [], story: ' ', colourways, pictures: [] });
    expect(bare).toMatchObject({ picture: false, box: false, story: false, stock: false });
  });
});
