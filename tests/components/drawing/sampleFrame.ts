/** Frames for the tests of drawings: any family, size, mounting and bridge, without the content folder. */
import type { Bridge, Frame, FrameSize, Mounting } from '../../../src/catalogue/frame.ts';
import { fitFamily, type OutlineFamily } from '../../../src/optics/outlineFamily.ts';

interface Sample {
  readonly family?: OutlineFamily;
  readonly aMm?: number;
  readonly bMm?: number;
  readonly dblMm?: number;
  readonly bridge?: Bridge;
  readonly mounting?: Mounting;
}

/** A frame of one size whose ED is in the middle of what its family reaches. */
export function sampleFrame(sample: Sample = {}): { readonly frame: Frame; readonly size: FrameSize } {
  const { family = 'panto', aMm = 50, bMm = 42, dblMm = 19, bridge = 'saddle' } = sample;
  const { mounting = { kind: 'full' } } = sample;
  const reach = fitFamily(family, { aMm, bMm, edMm: 1 });
  if (reach.ok) throw new Error('No lens is 1 mm across.');
  const edMm = (reach.leastEdMm + reach.mostEdMm) / 2;
  const fit = fitFamily(family, { aMm, bMm, edMm });
  if (!fit.ok) throw new Error(`The family ${family} does not reach ED ${edMm}.`);
  const part = { colour: '#5b3a29', second: null, finish: 'solid' } as const;
  const size: FrameSize = {
    id: `${aMm}-${dblMm}`,
    aMm,
    bMm,
    dblMm,
    edMm,
    templeMm: 145,
    bridge,
    outline: { origin: 'fitted', family, radiiMm: fit.outline.radiiMm },
    priceDifferenceMinor: 0,
  };
  const rimless = mounting.kind === 'drilled';
  const frame: Frame = {
    id: 'sample',
    model: 'Sample',
    collection: 'tests',
    summary: '',
    story: '',
    priceMinor: 10_000,
    material: 'acetate',
    wearer: 'adult',
    sun: false,
    mounting,
    rimDepthMm: rimless ? 0 : 4,
    rimCoverMm: rimless ? 0 : 0.8,
    faceFormDeg: 5,
    frameCurveD: 4,
    massG: 20,
    comesFitted: '',
    inTheBox: [],
    colourways: [
      {
        code: 'one',
        name: 'One',
        front: part,
        bridge: part,
        temples: part,
        priceDifferenceMinor: 0,
        stock: 'in-stock',
      },
    ],
    sizes: [size],
    notOffered: [],
  };
  return { frame, size };
}
