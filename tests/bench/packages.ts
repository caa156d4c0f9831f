/**
 * Prints what it costs to judge and price every package of a frame, first time and warm, with a new prescription each
 * time, and the advice on one package. Run: `node tests/bench/packages.ts`.
 */
import { readFileSync } from 'node:fs';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { advisedPair } from '../../src/quote/advice.ts';
import { quote } from '../../src/quote/quote.ts';
import type { QuoteRequest } from '../../src/quote/request.ts';
import { packagesOf } from '../../src/quote/space.ts';
import { barePair } from './pair/barePair.ts';
import { median, timed } from './pair/timing.ts';

const loaded = loadCatalogue('content');
if (!loaded.ok) throw new Error('The demo shop has faults: npm run check lists them.');
const { catalogue } = loaded;
const sample = JSON.parse(readFileSync('tests/fixtures/requests/distance.json', 'utf8')) as QuoteRequest;

/** The sample with another sphere, so that no answer can have been kept. */
function withSphere(sphere: number): QuoteRequest {
  const pairs = sample.pairs.map((pair) => ({
    ...pair,
    prescription: {
      right: { sphere, cylinder: -0.75, axis: 170 },
      left: { sphere: sphere + 0.5 },
      vertexDistance: 12,
    },
  }));
  return { ...sample, pairs };
}

/** As many bare pairs as there are designs and materials. */
function barePairs(count: number, sphereD: number): void {
  const radiiMm = catalogue.frames[0]?.sizes[0]?.outline.radiiMm ?? [];
  for (let i = 0; i < count; i++) barePair(radiiMm, sphereD);
}

let count = 0;
const first = timed(() => {
  count = packagesOf(catalogue, withSphere(-3.25), 0).length;
});
const warm = Array.from({ length: 60 }, (_, i) =>
  timed(() => packagesOf(catalogue, withSphere(-8 + i / 4), 0)),
).slice(20);
const pairs = catalogue.designs.length * catalogue.materials.length;
const bare = median(
  Array.from({ length: 60 }, (_, i) => timed(() => barePairs(pairs, -8 + i / 4))).slice(20),
);
console.log(
  `${count} packages of a frame: first ${first.toFixed(1)} ms, warm median ${median(warm).toFixed(1)} ms,` +
    ` ${(median(warm) / bare).toFixed(1)} times ${pairs} bare finished pairs (${bare.toFixed(1)} ms)`,
);

const one = Array.from({ length: 400 }, (_, i) =>
  timed(() => quote(catalogue, withSphere(-8 + (i % 60) / 4))),
);
console.log(`one package: warm median ${median(one.slice(100)).toFixed(2)} ms`);

const advice = Array.from({ length: 12 }, (_, i) => {
  const request = withSphere(-9 + i / 4);
  const reply = quote(catalogue, request);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  return timed(() => advisedPair(catalogue, request, reply.answer, 0));
});
console.log(
  `remedies, alternatives, way out: first ${advice[0]?.toFixed(0)} ms, median ${median(advice).toFixed(0)} ms`,
);
