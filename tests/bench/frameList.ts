/**
 * Prints what a list of frames costs: the time to judge the best package of each for a new prescription, against
 * finishing one bare pair of lenses for each, and the bytes that it loads. Frames are those of the demonstration shop
 * in other sizes and prices; the engine is warmed up as the page does it while somebody types. Run: `node tests/bench/frameList.ts`.
 */
import { gzipSync } from 'node:zlib';
import type { Frame } from '../../src/catalogue/frame.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { warmUp } from '../../src/configurator/list/answerList.ts';
import { shopData } from '../../src/configurator/shopData.ts';
import { type FrameAnswer, frameJudge } from '../../src/quote/frameList.ts';
import { receiveFrame, sendFrame } from '../../src/quote/frameListData.ts';
import type { ListRequest } from '../../src/quote/frameListRequest.ts';
import { barePair } from './pair/barePair.ts';
import { median, timed } from './pair/timing.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
const shop = reading.catalogue;
const data = shopData(shop);

/** The i-th frame of a shop of many: a frame of the demonstration, a little wider or narrower, dearer or cheaper. */
function frameNumber(i: number): Frame {
  const base = shop.frames[i % shop.frames.length] as Frame;
  const round = Math.floor(i / shop.frames.length);
  const scale = 1 + ((round % 9) - 4) * 0.008;
  return {
    ...base,
    id: `${base.id}-${round}`,
    priceMinor: base.priceMinor + (round % 4) * 1000,
    sizes: base.sizes.map((size) => ({
      ...size,
      aMm: size.aMm * scale,
      bMm: size.bMm * scale,
      edMm: size.edMm * scale,
      outline: { ...size.outline, radiiMm: size.outline.radiiMm.map((mm) => mm * scale) },
    })),
  };
}

const eyes = (sphere: number, add?: number): ListRequest['prescription'] => ({
  right: { sphere, cylinder: -0.75, axis: 170, ...(add === undefined ? {} : { add }) },
  left: { sphere: sphere + 0.5, ...(add === undefined ? {} : { add }) },
  vertexDistance: 12,
  issued: '2026-06-01',
});
const asked = (prescription: ListRequest['prescription'], use: ListRequest['use']): ListRequest => ({
  date: '2026-11-25',
  wearer: null,
  use,
  prescription,
  fit: { pd: { right: 31.5, left: 32 } },
});
const REQUESTS: readonly (readonly [string, (n: number) => ListRequest])[] = [
  ['-3.25, distance', (n) => asked(eyes(-3.25 - n / 8), 'distance')],
  ['-9.50, distance', (n) => asked(eyes(-9.5 + n / 8), 'distance')],
  ['+4.50, distance', (n) => asked(eyes(4.5 - n / 8), 'distance')],
  ['-2.00 add 2.00, all', (n) => asked(eyes(-2 - n / 8, 2), 'all')],
  ['-19.00, nothing fits', (n) => asked(eyes(-19 - n / 8), 'distance')],
];

/** One bare pair a frame, in its first size. */
function barePairs(frames: readonly Frame[]): void {
  for (const { sizes } of frames) barePair(sizes[0]?.outline.radiiMm ?? [], -3.25);
}

for (const count of [300, 2000]) {
  const sent = Array.from({ length: count }, (_, i) => sendFrame(frameNumber(i)));
  const text = JSON.stringify(sent);
  const zipped = gzipSync(text, { level: 9 }).length;
  console.log(
    `${count} frames: ${(zipped / 1000).toFixed(1)} kB gzipped, ${((zipped / count / 1000) * 100).toFixed(1)} kB per 100 frames`,
  );
  const frames: Frame[] = [];
  const read = timed(() => frames.push(...(JSON.parse(text) as typeof sent).map(receiveFrame)));
  console.log(`  read from text: ${read.toFixed(1)} ms`);
  await warmUp(data, sent);
  const bare = median(Array.from({ length: 9 }, () => timed(() => barePairs(frames))));
  for (const [name, request] of REQUESTS) {
    let answers: (FrameAnswer | null)[] = [];
    const times = Array.from({ length: 9 }, (_, n) =>
      timed(() => {
        const judge = frameJudge(data, request(n));
        answers = frames.map((frame) => judge(frame));
      }),
    );
    const able = answers.filter((answer) => answer !== null && answer.verdict !== 'refused').length;
    console.log(
      `  ${name.padEnd(22)} first ${(times[0] ?? 0).toFixed(0)} ms, median ${median(times).toFixed(0)} ms,` +
        ` ${(median(times) / bare).toFixed(1)} times the bare pairs (${bare.toFixed(1)} ms), ${able} of ${count} can be made`,
    );
  }
}
