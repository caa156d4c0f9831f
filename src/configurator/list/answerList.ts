/** Answers the list in parts, so that cards fill while later frames are still judged; a newer request ends an older. */
import type { Frame } from '../../catalogue/frame.ts';
import { type FrameAnswer, frameJudge } from '../../quote/frameList.ts';
import { receiveFrame, type SentFrame } from '../../quote/frameListData.ts';
import type { ListRequest } from '../../quote/frameListRequest.ts';
import type { ShopData } from '../shopData.ts';
import { type Limits, withinOf } from './filters.ts';

/** One frame's part of an answer; null: nothing of it is within the limits, or serves the use. */
export interface Listed {
  readonly frame: string;
  readonly answer: FrameAnswer | null;
}

export interface ListTold {
  readonly serial: number;
  readonly listed: readonly Listed[];
  /** Nothing more comes for this request. */
  readonly done: boolean;
}

/** How long a part takes before it is told, ms. */
const PART_MS = 25;

const nextTask = () => new Promise<void>((done) => setTimeout(done, 0));

/** Answers requests over all frames, in the order in which they were sent. */
export function listAnswerer(
  shop: ShopData,
  sent: readonly SentFrame[],
  tell: (told: ListTold) => void,
  partMs = PART_MS,
) {
  const frames: Frame[] = [];
  let latest = 0;
  return async (serial: number, request: ListRequest, limits: Limits): Promise<void> => {
    latest = serial;
    const judge = frameJudge(shop, request);
    const within = withinOf(limits);
    let listed: Listed[] = [];
    let began = performance.now();
    for (const [at, one] of sent.entries()) {
      const frame = frames[at] ?? receiveFrame(one);
      frames[at] = frame;
      listed.push({ frame: frame.id, answer: judge(frame, within) });
      if (performance.now() - began < partMs || at === sent.length - 1) continue;
      tell({ serial, listed, done: false });
      await nextTask();
      if (latest !== serial) return;
      listed = [];
      began = performance.now();
    }
    tell({ serial, listed, done: true });
  };
}

/** Frames that are enough for the engine to be compiled for one kind of prescription. */
const WARMING = 120;

/** Weak and strong, minus and plus, with an add and without: each takes other paths through the engine. */
const USUAL: readonly Pick<ListRequest, 'use' | 'prescription'>[] = [
  {
    use: 'distance',
    prescription: { right: { sphere: -2, cylinder: -0.5, axis: 90 }, left: { sphere: 2 } },
  },
  {
    use: 'all',
    prescription: { right: { sphere: -2, add: 2 }, left: { sphere: -1.5, cylinder: -1, axis: 20, add: 2 } },
  },
  { use: 'distance', prescription: { right: { sphere: -9 }, left: { sphere: -10 } } },
];

/**
 * Judges some frames for nobody: while a prescription is typed, the engine gets quick for it. It lets go between
 * frames and ends as soon as `stop` says so.
 */
export async function warmUp(
  shop: ShopData,
  sent: readonly SentFrame[],
  stop: () => boolean = () => false,
): Promise<void> {
  const frames = sent.slice(0, WARMING).map(receiveFrame);
  for (const usual of USUAL) {
    const judge = frameJudge(shop, { date: '2026-01-01', wearer: 'adult', fit: { pd: 63 }, ...usual });
    for (const frame of frames) {
      if (stop()) return;
      judge(frame);
      await nextTask();
    }
  }
}
