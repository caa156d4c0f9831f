/**
 * Prints what a finished pair costs (thickness solved, 720 edge radii, volume, mass) against the bare evaluation
 * of the same surface sags at as many points, in the same run. Run: `node tests/bench/pair.ts`.
 */
import { finishLens } from '../../src/optics/finishedLens.ts';
import { keptOutline } from '../../src/optics/keptOutline.ts';
import type { LensToMake } from '../../src/optics/lensToMake.ts';
import { mirror } from '../../src/optics/outline.ts';
import { fitFamily } from '../../src/optics/outlineFamily.ts';
import { conicSag, prepareBack, preparedBackSag } from '../../src/optics/surface.ts';
import type { Outline, PrismVector, SpheroCylinder } from '../../src/optics/types.ts';
import { asSolid } from '../optics/solids/asSolid.ts';
import { measure } from '../optics/solids/meshModel.ts';

interface Case {
  readonly name: string;
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
  readonly frontPowerD: number;
}

const NONE = { x: 0, y: 0 };
const CASES: Case[] = [
  {
    name: 'sphere -3.25',
    power: { sphereD: -3.25, cylinderD: 0, axisDeg: 180 },
    prism: NONE,
    frontPowerD: 4,
  },
  {
    name: 'toric -3.25/-0.75x170',
    power: { sphereD: -3.25, cylinderD: -0.75, axisDeg: 170 },
    prism: NONE,
    frontPowerD: 4,
  },
  {
    name: 'toric +3.25/-0.75x170',
    power: { sphereD: 3.25, cylinderD: -0.75, axisDeg: 170 },
    prism: NONE,
    frontPowerD: 8,
  },
  {
    name: 'toric -3.25/-0.75x170, 1.5 up',
    power: { sphereD: -3.25, cylinderD: -0.75, axisDeg: 170 },
    prism: { x: 0, y: 1.5 },
    frontPowerD: 4,
  },
];

const fitted = fitFamily('panto', { aMm: 51, bMm: 40, edMm: 54 });
if (!fitted.ok) throw new Error(`no outline: ${fitted.reason}`);
const OUTLINES: Outline[] = [fitted.outline, mirror(fitted.outline)];

function order(item: Case, outline: Outline, inwards: number): LensToMake {
  return {
    power: item.power,
    prism: item.prism,
    index: 1.6,
    densityGPerCm3: 1.3,
    frontPowerD: item.frontPowerD,
    frontConic: 0,
    outline,
    reference: { xMm: inwards, yMm: 3 },
    limits: { centreMm: 1.5, edgeMm: 1, holes: [] },
    fixedCentreThicknessMm: null,
    profile: null,
  };
}

/** Median time of a call in microseconds, over rounds of many calls, after warming up. */
function median(call: () => unknown): number {
  const times: number[] = [];
  for (let round = 0; round < 60; round++) {
    const start = performance.now();
    for (let i = 0; i < 50; i++) call();
    times.push(((performance.now() - start) * 1000) / 50);
  }
  return times.sort((a, b) => a - b)[30] as number;
}

function bare(pair: readonly LensToMake[]): () => number {
  const surfaces = pair.map((lens) => {
    const made = finishLens(lens);
    if (!made.ok) throw new Error(`no lens: ${made.reason}`);
    return {
      lens,
      curvature: 1 / made.lens.front.radiusMm,
      back: prepareBack(made.lens.back),
      out: new Float64Array(360),
    };
  });
  return () => {
    for (const { lens, curvature, back, out } of surfaces) {
      const { xMm, yMm } = keptOutline(lens.outline);
      for (let i = 0; i < out.length; i++) {
        const x = (xMm[i] as number) - lens.reference.xMm;
        const y = (yMm[i] as number) - lens.reference.yMm;
        out[i] = preparedBackSag(back, x, y) - conicSag(curvature, 0, x * x + y * y);
      }
    }
    return surfaces[0]?.out[0] ?? 0;
  };
}

for (const item of CASES) {
  const pair = OUTLINES.map((outline, i) => order(item, outline, i === 0 ? 3 : -3));
  const sags = bare(pair);
  median(sags);
  const finish = () => pair.map(finishLens);
  median(finish);
  const bareUs = median(sags);
  const pairUs = median(finish);
  const ratio = (pairUs / bareUs).toFixed(2);
  console.log(
    `${item.name.padEnd(30)} pair ${pairUs.toFixed(1)} us, bare sags ${bareUs.toFixed(1)} us, ratio ${ratio}`,
  );
}

/** For information: what a mesh kernel takes for the volume of one such pair. */
const pair = OUTLINES.map((outline, i) => order(CASES[1] as Case, outline, i === 0 ? 3 : -3));
const start = performance.now();
for (const lens of pair) {
  const made = finishLens(lens);
  if (made.ok) measure(asSolid(lens, made.lens), []);
}
console.log(`mesh solids of the same pair: ${(performance.now() - start).toFixed(0)} ms`);
